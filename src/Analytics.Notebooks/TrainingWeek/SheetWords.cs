using System.Globalization;
using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Quantities;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Words of the sheets.</summary>
internal static class SheetWords
{
    public static string Day(DateOnly date) => date.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    public static string ShortDay(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string When(SessionSlot slot) => slot.Start is { } start ? string.Create(CultureInfo.InvariantCulture, $"{Day(slot.Date)}, {start:HH\\:mm}") : Day(slot.Date);

    public static string Kind(DayKind kind) => Words.Capital(kind.Name);

    /// <summary>"6 × 2", "5 × 3 a side".</summary>
    public static string Sets(PlannedItem item) => string.Create(CultureInfo.InvariantCulture,
        $"{item.Scheme.Sets}\u00A0\u00D7\u00A0{item.Scheme.Repetitions}{(item.Exercise.IsUnilateral ? " a side" : "")}");

    /// <summary>How the sets follow each other, in a few words.</summary>
    public static string Way(PlannedItem item) => item.Scheme.Kind switch
    {
        SchemeKind.OnTheMinute => $"a set every {Time(item.Scheme.Interval)}",
        SchemeKind.Cluster => $"{Time(item.Scheme.InnerRest)} between repetitions, rest {Time(item.Scheme.Rest)}",
        SchemeKind.Ramp => $"build up to the top set, rest {Time(item.Scheme.Rest)}",
        SchemeKind.Contrast => $"after {Time(item.Scheme.InnerRest)} {item.Scheme.PartnerRepetitions.ToString(CultureInfo.InvariantCulture)} {item.Partner!.Name}, rest {Time(item.Scheme.Rest)}",
        _ => item.Scheme.Rest.Seconds > 0 ? $"rest {Time(item.Scheme.Rest)}" : "",
    };

    public static string Time(Duration time) => time.Seconds >= 120 && time.Seconds % 60 == 0
        ? Figures.Plain(time.Minutes, 0, "min") : Figures.Plain(time.Seconds, 0, "s");

    /// <summary>Working loads: one figure, or "155 to 185" where they build up.</summary>
    public static string Working(Prescription loads, LoadUnit bar)
    {
        if (loads.Working.Count == 0) return "";
        var (first, last) = (Number(loads.Working[0], bar), Number(loads.Working[^1], bar));
        return first == last ? last : $"{first}\u2013{last}";
    }

    public static string WarmUp(Prescription loads, LoadUnit bar)
        => string.Join(", ", loads.WarmUp.Select(w => string.Create(CultureInfo.InvariantCulture, $"{Number(w.Load, bar)}\u00D7{w.Repetitions}")));

    /// <summary>A load without its unit, which stands in the head.</summary>
    public static string Number(Mass load, LoadUnit bar) => (load.Kilograms * bar.PerKilogram).ToString("0.##", CultureInfo.InvariantCulture);

    public static string Height(Length height, string unit) => unit == "in" ? Figures.Plain(height.Inches, 0, "in") : Figures.Plain(height.Centimetres, 0, "cm");
}

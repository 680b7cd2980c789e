using System.Globalization;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Quantities;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Words and figures of a week.</summary>
internal static class WeekWords
{
    /// <summary>"Monday 15 June".</summary>
    public static string Day(DateOnly date) => date.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>"Mon 15 June".</summary>
    public static string ShortDay(DateOnly date) => date.ToString("ddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>"Mon 15 June, 07:00".</summary>
    public static string Session(SessionSlot slot) => ShortDay(slot.Date) + (slot.Start is { } start ? Invariant($", {start:HH\\:mm}") : "");

    /// <summary>"90 s", "2 min", "2 min 30 s".</summary>
    public static string Time(Duration time)
    {
        var seconds = (int)Math.Round(time.Seconds);
        return seconds < 120 ? Invariant($"{seconds}\u2009s") : Invariant($"{seconds / 60}\u2009min{(seconds % 60 > 0 ? Invariant($" {seconds % 60}\u2009s") : "")}");
    }

    /// <summary>"4 × 3 a side".</summary>
    public static string Sets(PlannedItem item)
        => Invariant($"{item.Scheme.Sets}\u2009\u00D7\u2009{item.Scheme.Repetitions}{(item.Exercise.IsUnilateral ? " a side" : "")}");

    /// <summary>"at 85 %, at least 2 good ones left", of a ramp "at 60 to 85 %"; empty where speed ends the set. The per cent is that of the load: only a ramp has two.</summary>
    public static string Effort(PlannedItem item)
    {
        var scheme = item.Scheme;
        var left = scheme.Reserve is { } reserve ? Invariant($"at least {reserve:0.#} good ones left") : "";
        if (item.Exercise.Basis.Kind != LoadBasisKind.Lift || scheme.MostPercent is not { } most) return left;
        var low = scheme.Kind == SchemeKind.Ramp ? scheme.LeastPercent ?? most : most;
        var percent = low < most ? Invariant($"at {low:0.#} to {most:0.#}\u2009%") : Invariant($"at {most:0.#}\u2009%");
        return left.Length > 0 ? $"{percent}, {left}" : percent;
    }

    /// <summary>How the sets follow each other, with the rest.</summary>
    public static string Way(PlannedItem item)
    {
        var scheme = item.Scheme;
        return scheme.Kind switch
        {
            SchemeKind.OnTheMinute when Math.Abs(scheme.Interval.Seconds - 60) < 0.5 => $"{Count(scheme.Sets)} {Repeated(scheme.Repetitions)} on the minute: what is left of it is rest",
            SchemeKind.OnTheMinute => $"a set begins every {Time(scheme.Interval)}: what is left of it is rest",
            SchemeKind.Cluster => $"{Time(scheme.InnerRest)} between the repetitions of a set; rest {Time(scheme.Rest)}",
            SchemeKind.Ramp => $"load goes up from set to set; rest {Time(scheme.Rest)}",
            SchemeKind.Contrast => Invariant($"contrast pair: then {scheme.PartnerRepetitions} {item.Partner?.Name} after {Time(scheme.InnerRest)}; rest {Time(scheme.Rest)}"),
            _ => $"rest {Time(scheme.Rest)}",
        };
    }

    /// <summary>A load in the unit the weights are marked in, without the unit.</summary>
    public static string Load(Mass load, string unit) => Figures.Plain(unit == "lb" ? load.Pounds : load.Kilograms, Decimals(unit == "lb" ? load.Pounds : load.Kilograms));

    /// <summary>A height in the unit jumps are shown in.</summary>
    public static string Height(Length height, string unit)
        => unit == "in" ? Figures.Plain(height.Inches, 0, "in") : Figures.Plain(height.Centimetres, 0, "cm");

    /// <summary>"A", "B", ... "Z", "AA".</summary>
    public static string Letter(int index) => index < 26 ? ((char)('A' + index)).ToString() : Letter(index / 26 - 1) + Letter(index % 26);

    /// <summary>"maximal strength day", a name of the coach's own as it is.</summary>
    public static string Kind(DayKind kind) => kind.Name;

    private static int Decimals(double value) => Enumerable.Range(0, 3).FirstOrDefault(d => Math.Abs(value - Math.Round(value, d)) < 1e-6, 2);

    private static string Count(int count) => Words.Count(count);

    private static string Repeated(int repetitions) => repetitions switch { 1 => "singles", 2 => "doubles", 3 => "triples", _ => Invariant($"sets of {repetitions}") };
}

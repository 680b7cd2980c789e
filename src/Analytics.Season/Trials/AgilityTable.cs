using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>agility.csv</c>: change-of-direction runs.</summary>
internal sealed class AgilityTable : TrialTable
{
    public static readonly Column Test = new("test", needed: true);

    public static readonly Column Timing = new("timing");

    public static readonly Column OnSide = new("side");

    public static readonly QuantityColumn Time = new("time", UnitSets.Times, 1, 60, needed: true);

    // Seconds outside which a time is a slip; common practice, no source.
    private static readonly Dictionary<string, (double Low, double High)> Limits = new(StringComparer.Ordinal)
    {
        ["pro_agility"] = (3.4, 8),
        ["505"] = (1.7, 4.5),
        ["three_cone"] = (5.5, 13),
    };

    public static readonly IReadOnlyList<string> KnownTests = [.. Limits.Keys];

    public override string Name => "agility";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Test, Attempt, Timing, OnSide, Time];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        var test = row.NeedIdentifier(Test, "test", KnownTests);
        var timing = row.NeedWord(Timing, Words.Timing, place.Settings.DefaultTiming, "timing");
        var side = row.Word(OnSide, Words.Sides);
        var time = row.NeedQuantity(Time, "time");
        if (Limits.TryGetValue(test, out var limits) && (time < limits.Low || time > limits.High))
            row.Fault(row.Head.HeadOf(Time), row.Text(Time), $"{CellText.Number(time)} s is outside the allowed {CellText.Number(limits.Low)} to {CellText.Number(limits.High)} s for {test}", "Check the time and the test.");
        var attempt = place.Numbers.Of(row, Attempt, place.AthleteId, test, (int)timing * 4 + (side is null ? 0 : 1 + (int)side));
        return row.Faults.Count > 0 ? null : new AgilityTrial
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Test = test,
            Timing = timing,
            Side = side,
            Time = Duration.FromSeconds(time),
        };
    }
}

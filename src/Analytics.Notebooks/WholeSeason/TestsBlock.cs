using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Which tests are worth their time.</summary>
internal static class TestsBlock
{
    public static Block Of(SeasonContext season)
    {
        var tests = All(season);
        if (tests.Count == 0) return new Section("Which tests are worth their time?", "No test was done by enough players.");
        return new Section("Which tests are worth their time?",
            "A test earns its minutes when it tells players apart; that is what the advice goes by. How many test days it takes to see a change that matters stands beside it.",
            DataTable.Of("What to do with each test", tests, t => t
                .Text("Test", q => new Cell(q.Metric.Label, Words.Scale(season.Values(q.Metric).Series)))
                .Text("Advice", q => new Cell(AdviceWords(q.Advice), "", q.Advice switch { TestAdvice.Keep => Tone.Gain, TestAdvice.Drop => Tone.Loss, _ => Tone.Plain }))
                .Text("Why", q => Words.Capital(AfterColon(q.Reason)))
                .Numeric("Minutes", "", q => Minutes(q))),
            new Folded("The figures behind the advice", [Figures(season, tests)]),
            new Note(TestQualityRule.Standard.Statement),
            new Note("Minutes are minutes of one station for the whole squad; two stations halve them. Unless the season sets \u201Ctest_minutes\u201D they are common practice, no source."));
    }

    internal static IReadOnlyList<TestQuality> All(SeasonContext season) => [.. SeasonMeasures.Tested(season).Select(season.Quality)];

    internal static string AdviceWords(TestAdvice advice) => advice switch
    {
        TestAdvice.Keep => "keep",
        TestAdvice.Mend => "mend",
        TestAdvice.Drop => "drop",
        _ => "cannot tell yet",
    };

    private static DataTable Figures(SeasonContext season, IReadOnlyList<TestQuality> tests) => DataTable.Of("Error, signal and cost of each test", tests, t => t
        .Text("Test", q => q.Metric.Label)
        .Numeric("Typical error", "", q => Error(season, q))
        .Numeric("ICC", "", q => q.Icc is { } icc ? new Cell(Look.Figures.Plain(icc.Value, 2), Look.Figures.Limits(icc.Interval.Low, icc.Interval.High, 2)) : new Cell(null, "no own retest"))
        .Numeric("Signal to noise", "", q => q.SignalToNoise is { } signal ? new Cell(Look.Figures.Plain(signal, 1), Look.Figures.Limits(q.SignalToNoiseInterval?.Low, q.SignalToNoiseInterval?.High, 1)) : Cell.Missing)
        .Numeric("Change that matters", "", q => new Cell(season.Unit(q.Metric) is var u ? Look.Figures.Plain(u.Of(q.Worthwhile.Value), Math.Max(u.Decimals, 1), u.Symbol) : null))
        .Numeric("Change one test day sees", "", q => new Cell(season.Unit(q.Metric) is var u ? Look.Figures.Plain(u.Of(q.DetectableChange), Math.Max(u.Decimals, 1), u.Symbol) : null))
        .Numeric("Test days to see what matters", "", q => q.DaysForAthlete is { } days ? new Cell(days.ToString(CultureInfo.InvariantCulture), $"group of {q.GroupSize}: {q.DaysForGroup}") : Cell.Missing)
        .Numeric("Squad with a value", "%", q => new Cell(Look.Figures.Plain(100 * q.UsableShare, 0))));

    private static Cell Error(SeasonContext season, TestQuality quality)
    {
        var unit = season.Unit(quality.Metric);
        var decimals = unit.Decimals + 1;
        // A published error of unknown size has no interval, not one without width.
        var limits = quality.TypicalErrorInterval is { } i && i.High > i.Low ? Look.Figures.Limits(unit.Of(i.Low), unit.Of(i.High), decimals) : "";
        var source = quality.Reliability.HoldsDayToDayVariation ? quality.Reliability.Basis : $"{quality.Reliability.Basis}; a lower bound";
        return quality.TypicalError is { } error
            ? new Cell(Look.Figures.Plain(unit.Of(error), decimals, unit.Symbol), $"{limits} {source}".Trim())
            : new Cell(null, "no error known");
    }

    private static Cell Minutes(TestQuality quality) => quality.Cost switch
    {
        null => new Cell(null, "not known"),
        { IsDerived: true } cost => new Cell("0", cost.Basis),
        { } cost => new Cell(string.Create(CultureInfo.InvariantCulture, $"{quality.SquadMinutes:0}"), cost.Basis == TestMinutes.UsualBasis ? "" : cost.Basis),
    };

    // The reason begins with the advice, which has a column of its own.
    private static string AfterColon(string reason) => reason.IndexOf(": ", StringComparison.Ordinal) is > 0 and < 20 and var at ? reason[(at + 2)..] : reason;
}

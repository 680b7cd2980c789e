using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Which tests are worth their time.</summary>
internal static class TestsBlock
{
    public static Block Of(SeasonContext season)
    {
        IReadOnlyList<TestQuality> tests = [.. All(season), .. SeasonMeasures.TrialsTested(season).Select(season.Quality)];
        if (tests.Count == 0) return new Section("Which tests are worth their time?", "No test was done by enough players.");
        return new Section("Which tests are worth their time?",
            "A test earns its minutes when it tells players apart; that is what the advice goes by. How many test days it takes to see a change that matters stands beside it.",
            DataTable.Of("What to do with each test", tests, t => t
                .Text("Test", q => new Cell(q.Metric.Label, Words.Scale(season.Values(q.Metric).Series)))
                .Text("Advice", q => new Cell(q.Advice.Words(), "", q.Advice switch { TestAdvice.Keep => Tone.Gain, TestAdvice.Drop => Tone.Loss, _ => Tone.Plain }))
                .Text("Why", q => Words.Capital(q.Why))
                .Numeric("Minutes", "", q => Minutes(q))),
            new Folded("The figures behind the advice", [Figures(season, tests)]),
            new Note(TestQualityRule.Standard.Statement),
            new Note("Minutes are minutes of one station for the whole squad; two stations halve them. Unless the season sets \u201Ctest_minutes\u201D they are common practice, no source."));
    }

    internal static IReadOnlyList<TestQuality> All(SeasonContext season) => [.. SeasonMeasures.Tested(season).Select(season.Quality)];

    private static DataTable Figures(SeasonContext season, IReadOnlyList<TestQuality> tests) => DataTable.Of("Error, signal and cost of each test", tests, t => t
        .Text("Test", q => q.Metric.Label)
        .Numeric("Typical error", "", q => Error(season, q))
        .Numeric("ICC", "", q => q.Icc is { } icc ? new Cell(Look.Figures.Plain(icc.Value, 2), Look.Figures.Limits(icc.Interval.Low, icc.Interval.High, 2)) : new Cell(null, "no own retest"))
        .Numeric("Signal to noise", "", q => q.SignalToNoise is { } signal ? new Cell(Look.Figures.Plain(signal, 1), Look.Figures.Limits(q.SignalToNoiseInterval?.Low, q.SignalToNoiseInterval?.High, 1)) : Cell.Missing)
        .Numeric("Change that matters", "", q => Amount(season, q, q.Worthwhile.Value, q.Worthwhile.Interval))
        .Numeric("Change one test day sees", "", q => Amount(season, q, q.DetectableChange, q.DetectableInterval))
        .Numeric("Test days to see what matters", "", q => q.DaysForAthlete is { } days ? new Cell(days.ToString(CultureInfo.InvariantCulture), $"group of {q.GroupSize}: {q.DaysForGroup}") : Cell.Missing)
        .Numeric("Squad with a value", "%", q => new Cell(Look.Figures.Plain(100 * q.UsableShare, 0))));

    private static Cell Amount(SeasonContext season, TestQuality quality, double? value, Interval? interval)
    {
        var unit = season.Unit(quality.Metric);
        // No change that matters is "0.00 s": what would round to nothing gets one more decimal.
        var decimals = Math.Max(value is { } v ? unit.DecimalsFor([new(v, v)]) : unit.Decimals, 1);
        return new Cell(Look.Figures.Plain(unit.Of(value), decimals, unit.Symbol), interval is { } i ? Look.Figures.Limits(unit.Of(i.Low), unit.Of(i.High), decimals) : "");
    }

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
}

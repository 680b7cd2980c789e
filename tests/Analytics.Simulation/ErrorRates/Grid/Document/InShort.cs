using System.Globalization;
using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Rates;
using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>What it means for a squad, in words a coach can follow.</summary>
internal static class InShort
{
    private static readonly (int Players, int Df)[] Squads = [(10, 9), (20, 19), (60, 59)];

    public static string Of(GridStudy study) => $"""
        ## In short

        What the report's verdicts are worth when everybody of a squad has done a retest once and errors are normal:

        {Table(study)}
        - A clear verdict is wrong about an unchanged player about once in twenty at most, however small the squad; but in a big squad
          somebody nearly always is that one. The report says beside its counts how many chance alone would give.
        - "Cannot tell yet" is the usual answer to a small change, not a sign of none. A change of twice the smallest that matters is seen
          mostly in tests that repeat very well; with an ICC of 0.90 or less it is mostly missed.
        - A bigger retest does little for false verdicts and a little for true ones. More tests before do most: a change of 2 TE is
          called a clear gain in {Hit(study, 1)} % with one test before, {Hit(study, 3)} % with the mean of three, {Hit(study, 5)} % with five (df 19, SWC 1 TE).
        - Retest on days as far apart as testing days. When neighbouring days share their luck (correlation {ErrorLaw.Correlation.ToString(CultureInfo.InvariantCulture)}), the 95 % interval of a change
          holds the truth in {Range(study, ErrorKind.Serial)} % only and up to {Worst(study, ErrorKind.Serial)} % of the unchanged get a clear verdict; nothing in a report can show it.
        - Players who differ in their error ({Range(study, ErrorKind.Uneven)} %, false verdicts up to {Worst(study, ErrorKind.Uneven)} %), an error that grows with the value ({Range(study, ErrorKind.Proportional)} %,
          {Worst(study, ErrorKind.Proportional)} %) and a skewed one ({Range(study, ErrorKind.Skewed)} %, {Worst(study, ErrorKind.Skewed)} %) do less harm on average; players with a large error of their own are flagged more often than that.
        - Having changed by more than the smallest worthwhile change means nothing by itself: with an ICC of 0.90, {Point(study)} % of the
          unchanged have.

        """;

    private static MarkdownTable Table(GridStudy study)
    {
        var known = study.Rates.Where(r => r.Entry is ReportRule).ToDictionary(r => r.Case.Label, r => r.Count);
        string Ask(int question, (int Players, int Df) squad, double icc = ReportRule.Middle)
            => Cells.Percent(known[ReportRule.Label(squad.Players, squad.Df, icc, ReportRule.Questions[question])].Rate) + " %";
        var table = new MarkdownTable(["", .. Squads.Select(s => $"squad of {s.Players}")]);
        table.Row(["an unchanged player gets a clear verdict", .. Squads.Select(s => Ask(2, s))]);
        table.Row(["somebody does, when nobody in the squad has changed", .. Squads.Select(s => Ask(3, s))]);
        table.Row(["the 95 % interval of a player's change holds his true change", .. Squads.Select(s => Ask(0, s))]);
        foreach (var icc in ReportRule.Reliabilities)
            table.Row([FormattableString.Invariant($"a gain of twice the smallest that matters is called clear, ICC {icc:0.00}"), .. Squads.Select(s => Ask(5, s, icc))]);
        table.Row(["the true typical error may be this many times the one found", .. Squads.Select(s => Factors(s.Df))]);
        return table;
    }

    private static string Factors(double df)
    {
        var interval = TypicalError.Known(1, "", df).Interval();
        return string.Create(CultureInfo.InvariantCulture, $"{interval.Low:0.00} to {interval.High:0.00}");
    }

    private static string Hit(GridStudy study, int baseline)
        => Cells.Percent(study.Verdicts.First(r => r.Entry is BeyondErrorVerdict && r.Case == new ChangeCase(19, 1, baseline, ErrorKind.Normal) && r.TrueChange == 2).Hit);

    private static string Range(GridStudy study, ErrorKind kind)
        => Cells.Range([.. study.Intervals.Where(r => r.Entry is ChangeInterval && r.Cell.Errors == kind && r.Cell.Athletes >= 10).Select(r => r.Covered.Rate)]);

    private static string Worst(GridStudy study, ErrorKind kind)
        => Cells.Percent(study.Verdicts.Where(r => r.Entry is BeyondErrorVerdict && r.Case.Errors == kind && r.TrueChange == 0).Max(r => r.Clear));

    private static string Point(GridStudy study)
        => Cells.Percent(study.Rates.First(r => r.Entry is PointBeyondWorthwhile && r.Case.Label == "ICC 0.90").Count.Rate);
}

using System.Globalization;
using Analytics.Simulation.ErrorRates.Grid.Tables;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>The half of the document that measures each interval and verdict by itself.</summary>
public static class GridDocument
{
    public static string Write(GridStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var distances = ClosedForms.Distances(study);
        var farthest = distances.MaxBy(d => Math.Abs(d.Errors));
        return string.Create(CultureInfo.InvariantCulture, $"""
            ## Part 2: each interval and verdict by itself

            {study.Draws:N0} draws a case where theory gives the rate, a quarter of them elsewhere, fewer for slow methods, seed {study.Seed}; [error-rates.csv](error-rates.csv) has every case.
            A value is mean + athlete + true change + error. Typical error (TE) 1, mean 20. The kinds of error: **normal**; **skewed** (log-normal of shape {ErrorLaw.SkewShape});
            **grows with the value** (every value log-normal, 5 %); **neighbours correlate** (AR(1), {ErrorLaw.Correlation}, in the retest; the judged tests lie far apart);
            **differs between athletes** (log-normal about the squad's, shape {ErrorLaw.UnevenShape}); **common shift each trial** (SD {ErrorLaw.ShiftSd} TE). Athletes
            {string.Join(", ", TableCell.AthleteCounts)}; trials {string.Join(", ", TableCell.TrialCounts)}; ICC {string.Join(", ", TableCell.Reliabilities)}; other kinds than normal at ICC 0.90.

            Rates are in %, Monte Carlo standard error in brackets. SWC is the smallest worthwhile change.

            Where theory gives the rate, the simulation must meet it: of {distances.Count} such cases the farthest is {Math.Abs(farthest.Errors):0.0} standard errors off
            ({farthest.Case}); {distances.Count(d => Math.Abs(d.Errors) > 2)} are off by more than 2, about {0.0455 * distances.Count:0} expected by chance.

            ## Coverage of intervals, normal errors

            Range over trials and ICC. A star marks what reports print: with ten athletes or more it has to stay within {Cells.Percent(IntervalTables.Least)} to {Cells.Percent(IntervalTables.Most)}.

            {IntervalTables.Normal(study)}
            ## Where the intervals do not hold

            Every interval and kind of error, normal ones too, with a case outside nominal − 1.5 to nominal + 1.5 by more than two standard errors.

            {IntervalTables.NotHolding(study)}
            ## Verdicts on an athlete's change

            Single tests before and after, normal errors, the typical error from a retest with the degrees of freedom given.

            {VerdictTables.Of(study)}
            **Clear gains over the size of the change**, SWC half a typical error; the first row is the false-flag rate, both directions.

            {VerdictTables.Curve(study)}
            ## The report's rule in a whole squad

            Typical error from a retest of df + 1 players, worthwhile change 0.2 of the squad's own spread; the players of a squad share both, and their luck.

            {RateTables.Report(study)}
            **Quoted by the report** for the nearest case, false-flag rate the worst of the reliabilities:

            {QuotedFigures.Table(study)}
            ## Other flags, tests and probabilities

            {RateTables.Others(study)}
            """);
    }
}

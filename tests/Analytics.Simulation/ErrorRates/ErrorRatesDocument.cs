using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Document;

namespace Analytics.Simulation.ErrorRates;

/// <summary>docs/error-rates.md: the counts as tables, with what they mean.</summary>
public static partial class ErrorRatesDocument
{
    private const string FirstPart = "## Part 1: whole seasons", SecondPart = "## Part 2: ";

    /// <summary>The whole document.</summary>
    /// <param name="seasons">The part of whole seasons, <see cref="Seasons"/> or <see cref="Kept"/>.</param>
    /// <param name="grid">The rest.</param>
    public static string Write(string seasons, GridStudy grid) => string.Join("\n", Head(seasons, grid), InShort.Of(grid), seasons, GridDocument.Write(grid));

    /// <summary>The part of whole seasons.</summary>
    public static string Seasons(ErrorRateStudy kept, ErrorRateStudy modelsTrue, ErrorRateStudy sizes) => string.Join("\n",
        SeasonsHead(kept), Sprints(kept, modelsTrue), Maxima(kept, modelsTrue), Changes(kept), MixedLifts(kept, modelsTrue), Hits(sizes), Held(kept));

    /// <summary>The part of whole seasons of a document written before.</summary>
    /// <exception cref="ArgumentException">It has none.</exception>
    public static string Kept(string document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var (from, to) = (document.IndexOf(FirstPart, StringComparison.Ordinal), document.IndexOf(SecondPart, StringComparison.Ordinal));
        return from >= 0 && to > from
            ? document[from..(to - 1)]
            : throw new ArgumentException($"The document has no \"{FirstPart}\" to keep; let seasons run.", nameof(document));
    }

    private static string Head(string seasons, GridStudy grid) => string.Create(CultureInfo.InvariantCulture,
        $"""
        # How often the conclusions are wrong

        Written by one command, in a few minutes on two cores; the same seeds give the same figures on any number of threads:

            dotnet run -c Release --project tests/Analytics.Simulation -- error-rates {Options().Match(seasons).Value} --draws {grid.Draws} --grid-seed {grid.Seed} --out docs/error-rates.md

        Part 1 sends whole simulated seasons through the report's own chain. Part 2 measures each interval and each verdict by itself over a grid of
        squads, tests and kinds of error (`--seasons 0` does part 2 only and keeps part 1 as it stands). Everything is held against a known truth.

        """);

    private static string SeasonsHead(ErrorRateStudy study) => string.Create(CultureInfo.InvariantCulture,
        $"""
        {FirstPart}

        The season of the invented club is made anew {study.Seasons} times with other athletes, other luck and other typing errors (`--seasons {study.Seasons} --seed {study.Seed}`,
        one seed a season; [demo-data.md](demo-data.md) has the model), read from files, and sent through the same readers, fits, typical errors and
        verdict rule as a testing-day report. What is concluded is then held against the truth.

        Three kinds of season: **as kept** like the one in `data-demo`; **models true**, where the clock starts with the first movement, so that
        the sprint model holds and only its arithmetic is on trial, and where all athletes share one repetition curve, close to the library's
        equation but not the same; **known sizes**, where true changes have two fixed sizes.

        Rates are in %, the Monte Carlo standard error in brackets, seasons as clusters. The target for a 95 % interval is 93 to 97 %;
        *low* or *high* marks a rate outside it by more than two standard errors. Typical errors and verdicts of a season rest on its one
        pair of retest days and about 50 athletes.

        """);

    private static string Sprints(ErrorRateStudy kept, ErrorRateStudy modelsTrue)
    {
        var table = new MarkdownTable("season, start model", "runs", "top speed", "time constant", "V off by, mean (SD) [m/s]", "T off by, mean (SD) [s]");
        foreach (var (name, rates) in new[]
        {
            ("as kept, as the library chooses", kept.Chosen), ("as kept, unseen run-in", kept.RunIn), ("as kept, still start", kept.Still),
            ("models true, as the library chooses", modelsTrue.Chosen), ("models true, unseen run-in", modelsTrue.RunIn), ("models true, still start", modelsTrue.Still),
        })
        {
            table.Row(name, MarkdownTable.Count(rates.Speed), MarkdownTable.Coverage(rates.Speed), MarkdownTable.Coverage(rates.TimeConstant),
                MarkdownTable.Miss(rates.SpeedBias, rates.SpeedSpread), MarkdownTable.Miss(rates.TimeConstantBias, rates.TimeConstantSpread));
        }

        return $"""
            ## Top speed and time constant of a run

            Interval of the fit (errors pooled over the squad's runs) against the V and T of that very run.

            {table}
            The machinery covers when the model holds. As kept, the body has moved about 0.22 m when the hand leaves the ground. For a
            three-point start the library fits a clock offset; that is nearly but not quite the unseen run-in of these seasons, so the
            time constant comes out a little short and its interval covers less than it says. Fitting the run-in, which is what happened
            here, mends it, and is not the library's choice all the same: with a fifth more scatter it costs more than the bias it
            removes, and when the hand leaves at the first movement ("models true") or before it, the run-in cannot follow and the
            offset can ([sprinting.md](methods/sprinting.md) has both sides). Fitting a still start to a hand-lift clock ruins both, and no
            interval tells: that is why the start model is stated with every figure and time constants are never compared across start types.

            """;
    }

    private static string Maxima(ErrorRateStudy kept, ErrorRateStudy modelsTrue)
    {
        var estimated = new MarkdownTable("estimated from a set", "as kept", "bias [%]", "models true", "bias [%]");
        foreach (var (a, b) in kept.Estimated.Zip(modelsTrue.Estimated))
            estimated.Row(a.Name, MarkdownTable.Coverage(a.Covered), MarkdownTable.Number(a.BiasPercent, 1), MarkdownTable.Coverage(b.Covered), MarkdownTable.Number(b.BiasPercent, 1));
        var values = new MarkdownTable("value on the last day", "athletes", "as kept", "bias [%]", "typical error [%]", "models true", "bias [%]");
        foreach (var (a, b) in kept.DayValues.Zip(modelsTrue.DayValues))
        {
            values.Row(Label(a.Metric) + a.Remark, MarkdownTable.Count(a.Covered), MarkdownTable.Coverage(a.Covered), MarkdownTable.Number(a.BiasPercent, 1),
                MarkdownTable.Number(a.TypicalErrorPercent, 1), MarkdownTable.Coverage(b.Covered), MarkdownTable.Number(b.BiasPercent, 1));
        }

        return $"""
            ## What an athlete can do

            **1RM estimated from repetitions**: interval of the equation against the maximum of that day.

            {estimated}
            The intervals are wide on purpose: they hold the disagreement between equations and the published scatter between persons.
            In these seasons athletes differ less than that, so they cover more than they say. Every athlete has a repetition curve of
            his own, so each estimate is off by an amount that comes back with the same athlete; past ten repetitions the equations
            read high for this squad, and the library marks them doubtful.

            **One day's value**, the library's interval against true ability (free of the day's form).

            {values}
            Top speed, time constant and momentum are means of the day's fits. The time constant carries the bias of the start model, which is
            more than half its typical error, so its interval misses too often: compare time constants of one start type, on one set of gates,
            and do not take one for a true value. The two rows with the unseen run-in show the other choice: right as kept, off where
            the hand leaves at the first movement, and with a larger typical error, so that fewer true changes are seen. Momentum hardly feels it.

            A heaviest single stops at a step of the bar (5 lb here), so it reads half a step below what could be lifted, most in the
            lightest lift, and its interval covers less. Against ability less half a step, the last three rows, that bias is gone.

            """;
    }

    private static string Changes(ErrorRateStudy kept)
    {
        var table = new MarkdownTable("metric", "coverage, Jan to June", "unchanged, clear verdict", "coverage, April to June", "unchanged, clear verdict");
        foreach (var (season, april) in kept.OverTheSeason.Zip(kept.SinceApril))
            table.Row(Label(season.Metric), MarkdownTable.Coverage(season.Covered), MarkdownTable.Percent(season.FalseClear), MarkdownTable.Coverage(april.Covered), MarkdownTable.Percent(april.FalseClear));
        return $"""
            ## Change of an athlete

            95 % interval of the change against the true change, and how often an athlete who has not changed at all gets a clear
            verdict (the rule states: at most 5 %). Lifts: heaviest singles on both days. As kept.

            {table}
            Errors in these seasons are a share of the value. The retest days of one season seldom tell that from a constant error, and the
            library then takes the share, as is usual for such tests ([reliability.md](methods/reliability.md)). A wrong start model
            hardly harms a change: its bias is the same on both days and drops out. Momentum, and the two sprint times, have few
            unchanged athletes, since several qualities must all stay the same; their rates are known less well.

            """;
    }

    private static string MixedLifts(ErrorRateStudy kept, ErrorRateStudy modelsTrue)
    {
        var table = new MarkdownTable("lift", "the two values", "days", "coverage, as kept", "unchanged, clear verdict", "coverage, models true");
        for (var i = 0; i < kept.MixedLifts.Count; i++)
        {
            var (a, b) = (kept.MixedLifts[i], modelsTrue.MixedLifts[i]);
            table.Row(Label(a.Metric), a.Kind == LiftPair.OneOfEach ? "measured and estimated" : "both estimated", i < 4 ? "Jan to March" : "Jan to June",
                MarkdownTable.Coverage(a.Covered), MarkdownTable.Percent(a.FalseClear), MarkdownTable.Coverage(b.Covered));
        }

        return $"""
            ## Change of a 1RM that was not measured twice

            In March everyone lifts in sets, on the bench as many as possible at 225 lb; some lift in sets all season.

            {table}
            The typical error comes from values made alike, so the library adds to it what an equation may get wrong
            ([change.md](methods/change.md)). These intervals hold the true change more often than they say, and clear verdicts on unchanged
            athletes are rarer than one in twenty: on the safe side, for two reasons. The equation's error is the published scatter
            between persons together with the disagreement of the equations, and the athletes of these seasons differ less. And between sets six
            repetitions apart nothing is taken to cancel, since nobody has published how a person's bias at 3 repetitions goes with that at 15;
            here it is one trait, and part of it does cancel (bench press, both estimated, January to March).

            The price is width: such a change must be larger to be seen. Whoever wants to see change lifts the same way on both days.

            """;
    }

    private static string Hits(ErrorRateStudy sizes)
    {
        var table = new MarkdownTable("metric", "true change [TE]", "clear verdict, right way", "expected by the rule", "clear verdict, wrong way");
        foreach (var hit in sizes.Hits)
            table.Row(Label(hit.Metric), MarkdownTable.Number(hit.Size, 1), MarkdownTable.Percent(hit.Hit), MarkdownTable.Number(100 * hit.Expected, 1), MarkdownTable.Percent(hit.WrongWay));
        return $"""
            ## Who has truly changed

            Between April and June a third of the squad changes by about three typical errors (TE) of a test and a third by about
            five. The rule's closed form says what to expect.

            {table}
            Three typical errors are about the least change that two single tests tell from nothing, and they tell it about half the time:
            "cannot tell yet" is not "has not improved". Sizes below 3 and 5 are those of tests whose error on retest days holds more than the athlete's
            own variation: steps of the bar, sets instead of singles, the scatter of a fit. The rule's figure is for the mean size and the
            mean error; where they differ between athletes and seasons the mean rate lies a little below it.

            """;
    }

    private static string Held(ErrorRateStudy kept)
    {
        var table = new MarkdownTable("typing error put in", "held back");
        foreach (var (kind, tally) in kept.HeldBack.Found) table.Row(kind, MarkdownTable.Percent(tally));
        return string.Create(CultureInfo.InvariantCulture, $"""
            ## Typing errors

            {table}
            Rows held back that hold none of them: {kept.HeldBack.Innocent:N0} of {kept.HeldBack.RowsRead:N0} read. The shortest time allowed
            at a gate depends on what starts the clock ([data-dictionary.md](data-dictionary.md)), since off a hand-lift switch or under a
            late thumb a quick run reads faster than anyone runs.

            """);
    }

    private static string Label(JudgedMetric metric) => MetricCatalogue.Get(metric.Id).Label;

    [GeneratedRegex("--seasons \\d+ --seed \\d+")]
    private static partial Regex Options();
}

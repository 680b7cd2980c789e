using System.Globalization;
using Analytics.Planning.Solving;
using Analytics.Simulation.BenchStudy.Document;
using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.WeekStudy.Document;

/// <summary>docs/week-study.md.</summary>
public static class WeekStudyDocument
{
    /// <summary>The document.</summary>
    /// <param name="squads">What every squad gave.</param>
    /// <param name="seed">Seed of the first.</param>
    /// <param name="options">How long a plan was sought.</param>
    public static string Of(IReadOnlyList<WeekOutcome> squads, ulong seed, PlanOptions options)
        => string.Join("\n", Head(squads, seed, options), InShort(squads), SetsTable.Of(squads), CallsTable.Of(squads), Defaults(squads), Weak());

    private static string Head(IReadOnlyList<WeekOutcome> squads, ulong seed, PlanOptions options) => string.Create(CultureInfo.InvariantCulture,
        $"""
        # Whether a planned week serves who truly needs it

        A training week gives own work to players whose tests show a need. Here {squads.Count} invented squads of 60 players are planned of which the truth is known: the seasons of the [demo](demo-data.md), drawn anew,
        with missed tests, injuries, typing errors and restrictions, read through the season reader and planned as the notebook does it, each in the week of 15 June with its four days. Each squad is planned twice:
        **as drawn**, and with **planted deficits**: in each tested quality {Planting.Players} players at most of the middle of a group of {Planting.Group} or more are made truly worse by {Planting.Size:0.0} SDs between players of a group, in every test of
        that quality and on every day; all else, luck included, stays. As drawn a deficit is a true value worse than the median of the group by more than one such SD; without one is who is truly at the median or better.
        Players who train apart are left out. Written by one command; the same seed gives the same figures on any machine:

            dotnet run -c Release --project tests/Analytics.Simulation -- week-study --squads {squads.Count} --seed {seed} --effort {options.Effort:0.##} --out docs/week-study.md

        To save time plans are sought with an effort of {options.Effort:0.##} instead of {new PlanOptions().Effort:0.##} and taken from {100 * options.GoodEnough:0.#} % below what none can pass on, instead of {100 * new PlanOptions().GoodEnough:0.#} %. {squads.Sum(s => (s.Drawn.HasPlan ? 1 : 0) + (s.Planted.HasPlan ? 1 : 0))} of {2 * squads.Count} weeks have a plan; the others are in no figure. Plans are at most {100 * Quantiles.Median([.. squads.SelectMany(s => new[] { s.Drawn, s.Planted }).Where(s => s.HasPlan).Select(s => s.Gap)]):0.0} % from their bound in the middle case and {100 * squads.Max(s => Math.Max(s.Drawn.Gap, s.Planted.Gap)):0.0} % in the worst. Figures are per
        cent with the exact binomial 95 % interval in brackets (Clopper and Pearson 1934).

        """);

    private static string InShort(IReadOnlyList<WeekOutcome> squads)
    {
        var table = new MarkdownTable("what is wanted", "wanted, % of squads", "found, %")
            .Row("players with a planted deficit get more sets of that quality than players of their group without", "90", SetsTable.More(squads, null, o => o.Planted, q => q.IsPlanted, q => q.AllSets).ToString())
            .Row("so do players with a deficit as drawn", "90", SetsTable.More(squads, null, o => o.Drawn, q => q.IsDeficit, q => q.AllSets).ToString())
            .Row("every player without a called need does exactly his group's balanced default", "100", Rate.Of(squads.SelectMany(s => new[] { s.Drawn, s.Planted }).Where(s => s.HasPlan), DefaultRule.IsKept).ToString());
        return $"""
            ## In short

            {table}
            Of the planted deficits {Found(squads, o => o.Planted, q => q.IsPlanted)} % are called a need, of those as drawn {Found(squads, o => o.Drawn, q => q.IsDeficit)} %. Of players and qualities truly without a deficit {Found(squads, o => o.Drawn, q => q.IsWithout)} % are
            called one, so that extra work goes to hardly anybody who does not need it. Of players truly at or above the middle in every tested quality {Rate.Of(squads.SelectMany(s => s.Drawn.Players).Where(p => !p.IsApart && p.Qualities.All(q => q.IsWithout)), p => !p.HasCall)} % get the
            balanced default of their group and nothing else.

            """;
    }

    private static Rate Found(IReadOnlyList<WeekOutcome> squads, Func<WeekOutcome, PlannedSquad> plan, Func<QualityWeek, bool> which)
        => Rate.Of(squads.SelectMany(s => plan(s).Players).Where(p => !p.IsApart).SelectMany(p => p.Qualities).Where(which), q => q.IsNeed);

    private static string Defaults(IReadOnlyList<WeekOutcome> squads)
    {
        var all = squads.SelectMany(s => new[] { s.Drawn, s.Planted }).ToList();
        var uncalled = all.SelectMany(s => s.Players).Where(p => !p.IsApart && !p.HasCall).ToList();
        var defaults = all.SelectMany(s => s.Defaults).Where(d => d.Sessions > 0).ToList();
        return string.Create(CultureInfo.InvariantCulture,
            $"""
            ## The balanced default

            Who has no called need does what his group does, and as own work the group's default, which goes round the qualities that the days have own work for. Checked for every such player of every plan ({uncalled.Count} weeks of
            players): none of his own work is listed as for a need, and his week is the same, exercise by exercise and set by set, as that of every other such player of his group.

            In {defaults.Count} weeks of groups the default comes in {defaults.Average(d => d.Sessions):0.0} sessions on average and is of {defaults.Average(d => d.Qualities):0.0} different qualities. Of upper-body power and trunk control the demo has no test that tells: the
            planner says "cannot say" of both for {Rate.Of(all.SelectMany(s => s.Players), p => p.IsUntestedOpen)} % of players, and no need of them is called.

            """);
    }

    private static string Weak() => """
        ## What this does not show

        The truth is that of one generator: players of a group spread normally, tests err as the literature says, deficits lie in one quality and show in all tests of it. That a deficit gets more sets does not show that the
        sets mend it; that is what a retest is for. One calendar, one set of rooms, one catalogue. Squads share their luck, so intervals of shares of players are narrower than they should be; those of shares of squads are right.
        Deficits are planted in large groups only; in groups of three to five, where the middle is hardly known, few are found.

        The planner was changed after the first look at a few of these squads (7000 to 7003), which is no longer a blind trial for those: power and speed days have own work of more qualities, so that a weak squat and a weak bench
        of one group no longer compete for one place in the week, and the group's default keeps off a quality that somebody of the group needs, since otherwise all of the group did as much of it as he. So "balanced" means: what
        nobody of the group was found to need comes first, and it goes round from there.
        """ + "\n";
}

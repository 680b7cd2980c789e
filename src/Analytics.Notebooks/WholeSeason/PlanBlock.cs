using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Feedback;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Planned sets of a quality, how many of them were logged, and how the quality's test changed over the same stretch: description only.</summary>
internal static class PlanBlock
{
    private sealed record Row(string Group, TrainedQuality Quality, IReadOnlyList<PlannedDose> Doses);

    /// <summary>The block; null when the season has no plan, so that its report stays as it is.</summary>
    /// <param name="season">The season.</param>
    /// <param name="rows">Rows of its plans.</param>
    /// <param name="exercises">Exercises: they tell the quality.</param>
    public static Block? Of(SeasonContext season, IReadOnlyList<EarlierChoice> rows, ExerciseCatalogue exercises)
    {
        if (rows.All(r => r.Force == ChoiceForce.Never)) return null;
        const string title = "Planned and done";
        if (PlanStretch.Of(season, rows, exercises) is not { } plan)
            return new Section(title, "The plans kept lie outside the testing days of this report, so there is no change to set beside them.");

        var groupOf = season.Squad.ToDictionary(a => a.Id, a => a.Group, StringComparer.Ordinal);
        var doses = plan.Doses.Doses.Where(d => groupOf.ContainsKey(d.AthleteId)).ToList();
        var groups = season.Groups.SelectMany(g => doses.Where(d => groupOf[d.AthleteId] == g).GroupBy(d => d.Quality).OrderBy(q => q.Key)
            .Select(q => new Row(g, q.Key, [.. q]))).Where(r => r.Doses.Any(d => d.PlannedSets > 0)).ToList();
        return new Section(title,
            $"From {season.Day(plan.Before.Date)} to {season.Day(plan.After.Date)}: sets the plans asked for, the share of them that was written down, and the change of the first test of the quality. A set that is not in the log may have been done all the same.",
            Groups(season, plan, groups),
            new Folded("The same by player", [Players(season, plan, [.. doses.OrderBy(d => season.PlaceOf(d.AthleteId)).ThenBy(d => d.Quality)])]),
            new Note("Side by side is no proof that the one made the other: who was hurt or tired did less and gained less. Intervals are 95\u2009%." + Left(plan.Doses)));
    }

    private static DataTable Groups(SeasonContext season, PlanStretch plan, List<Row> rows) => DataTable.Of("Planned and done by group", rows, t => t
        .Text("Group", r => new Cell(r.Group, r.Doses.Count == 1 ? "1 player" : $"{r.Doses.Count} players"))
        .Text("Quality", r => Words.Capital(r.Quality.Name()))
        .Number("Planned sets, mean of a player", "", 1, r => r.Doses.Average(d => (double)d.PlannedSets))
        .Number("Of them logged", "%", 0, r => 100.0 * r.Doses.Sum(d => d.LoggedSets) / r.Doses.Sum(d => d.PlannedSets))
        .Numeric("Mean change", "", r => GroupChange(season, plan, r)));

    private static DataTable Players(SeasonContext season, PlanStretch plan, List<PlannedDose> doses) => DataTable.Of("Planned and done by player", doses, t => t
        .Text("Player", d => new Cell(season.Name(d.AthleteId), Words.Capital(d.Quality.Name())))
        .Number("Planned sets", "", 0, d => d.PlannedSets)
        .Number("Logged of them", "", 0, d => d.LoggedSets)
        .Number("Logged besides", "", 0, d => d.OtherSets)
        .Numeric("Change", "", d => plan.TestOf(d.Quality) is not { } test ? new Cell(null, "no test of it on both days")
            : plan.Change(test, d.AthleteId) is not { } change ? new Cell(null, $"{Words.Short(test)} not tested on both days")
            : new Cell(season.Unit(test).ChangeText(change.Difference, change.Interval), Words.Short(test))));

    private static Cell GroupChange(SeasonContext season, PlanStretch plan, Row row)
    {
        if (plan.TestOf(row.Quality) is not { } test) return new Cell(null, "no test of it on both days");
        var change = plan.Change(test, [.. row.Doses.Select(d => d.AthleteId)]);
        var tested = change.Athletes.Count;
        // The mean of one or two would be their own values.
        if (change.Mean is not { } mean || tested < season.Profile.MinimumGroup)
            return new Cell(null, string.Create(CultureInfo.InvariantCulture, $"{Words.Short(test)}: {tested} tested on both days, {season.Profile.MinimumGroup} are needed"));
        return new Cell(season.Unit(test).ChangeText(mean.Mean.Value, mean.Mean.Interval), $"{Words.Short(test)}, {Words.Players(tested)}");
    }

    private static string Left(PlannedDoses doses)
    {
        var unknown = doses.UnknownExercises.Count == 0 ? "" : $" Not in the list of exercises, so in no count: {string.Join(", ", doses.UnknownExercises)}.";
        return doses.WithoutSets == 0 ? unknown : string.Create(CultureInfo.InvariantCulture, $"{unknown} {doses.WithoutSets} planned {(doses.WithoutSets == 1 ? "exercise names" : "exercises name")} no number of sets and {(doses.WithoutSets == 1 ? "is" : "are")} in no count.");
    }
}

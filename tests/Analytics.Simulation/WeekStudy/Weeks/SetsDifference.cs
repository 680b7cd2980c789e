using Analytics.Simulation.WeekStudy.Squads;

namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>How many more sets of a quality players with a true deficit get than players of their group without.</summary>
public static class SetsDifference
{
    /// <summary>
    /// Mean over players with the deficit of his sets less the mean of those of his group who are truly at the median or better in that quality; null where nobody has one, or nobody of
    /// his group is without. Players who train apart are left out: what they do is a matter of their restrictions.
    /// </summary>
    /// <param name="squad">The squad with its plan.</param>
    /// <param name="quality">The quality; null for all of them together.</param>
    /// <param name="isDeficit">Who has the deficit.</param>
    /// <param name="sets">Which sets.</param>
    public static double? Of(PlannedSquad squad, StudiedQuality? quality, Func<QualityWeek, bool> isDeficit, Func<QualityWeek, int> sets)
    {
        List<double> more = [];
        foreach (var group in squad.Players.Where(p => !p.IsApart).GroupBy(p => p.Group))
            foreach (var of in group.SelectMany(p => p.Qualities).Where(q => quality is null || q.Quality == quality).GroupBy(q => q.Quality))
            {
                var without = of.Where(q => q.IsWithout && !isDeficit(q)).ToList();
                if (without.Count > 0) more.AddRange(of.Where(isDeficit).Select(q => sets(q) - without.Average(sets)));
            }

        return more.Count == 0 ? null : more.Average();
    }
}

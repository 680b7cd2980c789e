namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>What the balanced default promises.</summary>
public static class DefaultRule
{
    /// <summary>
    /// Whether all players of a plan without a called need do the default of their group and nothing else: no own work for a need, one default a session, and the same week as every
    /// other such player of the group. Who trains apart is left out.
    /// </summary>
    public static bool IsKept(PlannedSquad squad)
        => squad.Defaults.All(d => d.IsOneEach)
            && squad.Players.Where(p => !p.IsApart && !p.HasCall).GroupBy(p => p.Group).All(g => g.All(p => !p.HasOwnForNeed) && g.Select(p => p.Work).Distinct().Count() == 1);
}

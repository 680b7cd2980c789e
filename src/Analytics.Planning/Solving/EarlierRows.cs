using Analytics.Planning.Plans;
using Analytics.Planning.Weeks;

namespace Analytics.Planning.Solving;

/// <summary>Which sessions a row of an earlier plan is about.</summary>
internal static class EarlierRows
{
    /// <summary>
    /// Whether a row is about a session of a group: the one of its start, else any of its day. A start that no session of the group has that day (the session was moved)
    /// counts as none, so that moving a session drops no choice.
    /// </summary>
    /// <param name="problem">The problem.</param>
    /// <param name="row">The row.</param>
    /// <param name="slot">The session.</param>
    /// <param name="group">Group of the players.</param>
    /// <param name="later">Days the session is after that of the row: 7 for a row of the week before.</param>
    public static bool IsAbout(PlanProblem problem, EarlierChoice row, SessionSlot slot, string group, int later = 0)
        => row.Date.AddDays(later) == slot.Date && (row.Start == slot.Start || IsOfTheDay(problem, row, group, later));

    /// <summary>Whether any session of the day will do.</summary>
    public static bool IsOfTheDay(PlanProblem problem, EarlierChoice row, string group, int later = 0)
        => row.Start is null || !problem.Sessions.Any(s => s.Date == row.Date.AddDays(later) && s.Start == row.Start && s.Has(group));
}

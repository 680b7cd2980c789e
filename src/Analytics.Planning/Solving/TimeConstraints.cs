using System.Globalization;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>The session ends in time: warm-up, exercises, changes, the longest own work.</summary>
internal static class TimeConstraints
{
    public static void Add(WeekModel week)
    {
        if (!week.Problem.Rules.IsOn(RuleIds.SessionMinutes)) return;
        foreach (var day in week.Days)
            week.Rules.Hold(week.Model.Add(Seconds(week, day) <= 60L * day.Slot.Minutes), Rule(day));
    }

    public static RuleAtPlace Rule(UnitDay day) => new(RuleIds.SessionMinutes, PlaceTexts.Session(day.Slot),
        string.Create(CultureInfo.InvariantCulture, $"the session on {PlaceTexts.Session(day.Slot)} has {day.Slot.Minutes} minutes"));

    /// <summary>Seconds of a session, an upper bound as long as nothing else asks for less.</summary>
    public static LinearExpr Seconds(WeekModel week, UnitDay day)
    {
        var rules = week.Problem.Rules;
        var change = (long)Math.Round(60 * rules.Minutes(RuleIds.ChangeMinutes));
        var warmUp = (long)Math.Round(60 * rules.Minutes(RuleIds.WarmUpMinutes));
        var sum = LinearExpr.NewBuilder().Add(warmUp);
        foreach (var choice in day.Shared) sum.AddTerm(choice.Chosen, choice.Candidate.Seconds + change);
        if (day.HasOwn is null) return sum;
        var longest = week.Model.NewIntVar(0, day.Own.Values.SelectMany(o => o).Max(c => c.Candidate.Seconds), $"own seconds {day}");
        foreach (var choice in day.Own.Values.SelectMany(o => o)) week.Model.Add(longest >= choice.Chosen * choice.Candidate.Seconds);
        return sum.AddTerm(longest, 1).AddTerm(day.HasOwn, change);
    }
}

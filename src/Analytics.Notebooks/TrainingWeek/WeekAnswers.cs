using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The three answers: what the week does, who gets extra work on what, what needs care.</summary>
internal static class WeekAnswers
{
    private const int NamedMost = 4;

    public static Block Of(WeekContext week) => new Answers(week.Answer.Plan is null ? NoPlan(week) : What(week), Who(week), Care(week));

    private static Answer NoPlan(WeekContext week)
    {
        if (week.Choice.Sessions.Count == 0)
            return new("No session in this week.", "Neither the calendar nor the usual week of the phase has one. Add rows to training/calendar.csv, or name another week.", Tone.Loss);
        if (week.Squad.Players.Count == 0) return new("Nobody can train this week.", "Every player is listed as out. The list is below.", Tone.Loss);
        if (week.Answer.Undecided is { } why) return new("No plan yet.", why, Tone.Loss);
        var first = week.Answer.Clashes[0];
        return new("No plan keeps all rules.", $"{Words.Capital(Words.List([.. first.Rules.Select(r => r.Text)]))}: these cannot all be kept. Below stands what giving way on each would bring.", Tone.Loss);
    }

    private static Answer What(WeekContext week)
    {
        var kinds = week.Choice.Sessions.Select(s => $"{s.Date.ToString("dddd", CultureInfo.InvariantCulture)} {week.Training.Kinds.First(k => k.Id == s.Kind).Name}").Distinct().ToList();
        var heavy = week.Choice.Games.Where(g => g.Date >= week.Choice.Monday && g.Date <= week.Choice.Monday.AddDays(6)).Select(g => $"game on {g.Date.ToString("dddd", CultureInfo.InvariantCulture)}").ToList();
        return new($"{Words.Capital(Words.Count(week.Choice.Sessions.Select(s => s.Date).Distinct().Count()))} training days: {Words.List(kinds)}.", string.Create(CultureInfo.InvariantCulture,
            $"{Words.Players(week.Squad.Players.Count)} in {Groups(week)} groups, {week.Sessions.Where(s => !s.IsApart).Select(s => s.Minutes).DefaultIfEmpty(0).Min():0} to {week.Sessions.Select(s => s.Minutes).DefaultIfEmpty(0).Max():0} min a session with warm-up{(heavy.Count > 0 ? ", " + Words.List(heavy) : "")}. {Better(week)}").Replace("  ", " ", StringComparison.Ordinal));
    }

    private static int Groups(WeekContext week) => week.Squad.Players.Select(p => p.Group).Distinct().Count();

    /// <summary>How much better a plan could be.</summary>
    public static string Better(WeekContext week)
    {
        var quality = week.Answer.Plan!.Quality;
        var gap = 100 * quality.Gap;
        return (gap < 0.05 ? "By the stated aims no plan is better." : string.Create(CultureInfo.InvariantCulture, $"By the stated aims no plan can be more than {Math.Ceiling(gap * 10) / 10:0.0}\u2009% better."))
            + (quality.HitClock ? " The search was stopped by the clock; another machine might find another plan." : "");
    }

    private static Answer Who(WeekContext week)
    {
        var needs = week.Squad.Players.SelectMany(p => p.Needs.Where(n => n.IsNeed).Select(n => (Player: p, Need: n))).ToList();
        var open = week.Squad.Players.Count(p => !p.Needs.Any(n => n.IsNeed));
        var rest = $"{Words.Capital(Words.Players(open))} of whom the tests cannot say a need {(open == 1 ? "does his" : "do their")} group's balanced work.";
        if (needs.Count == 0) return new("Nobody gets extra work: the tests name no need.", $"A need takes {Figures.Plain(week.Rules.Value(Planning.Rules.RuleIds.NeedProbability), 0, "%")} probability. {rest}", Tone.Muted);
        var by = needs.GroupBy(n => n.Need.Quality).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).ToList();
        var first = by.Take(2).Select(g => $"{Words.List([.. g.OrderByDescending(n => n.Need.Probability).Take(NamedMost).Select(n => n.Player.Name)])}{(g.Count() > NamedMost ? $" and {g.Count() - NamedMost} more" : "")} ({g.Key.Name()})");
        return new($"{Words.Capital(Words.Players(needs.Select(n => n.Player.Id).Distinct().Count()))} get extra work on what the tests say holds them back: {Words.List([.. by.Select(g => $"{g.Count()} {g.Key.Name()}")])}.",
            $"Most probable: {string.Join("; ", first)}. {rest}", Tone.Gain);
    }

    private static Answer Care(WeekContext week)
    {
        List<string> care = [];
        void Add(int count, string one, string many)
        {
            if (count > 0) care.Add(count == 1 ? one : string.Create(CultureInfo.InvariantCulture, $"{count} {many}"));
        }

        var apart = week.Sessions.Where(s => s.IsApart).SelectMany(s => s.Players).Distinct().Count();
        var testFirst = week.Squad.Players.Count(p => week.Sessions.Any(s => s.Players.Contains(p.Id) && s.For(p.Id).Any(i => week.Loads(p.Id, i, s.Slot.Date).Instead?.StartsWith("test first", StringComparison.Ordinal) == true)));
        var unserved = week.Answer.Plan?.Needs.Count(n => n.OwnSets == 0) ?? 0;
        Add(week.Squad.Out.Count, "one player is out", "players are out");
        Add(apart, "one player trains apart within his restrictions", "players train apart within their restrictions");
        Add(testFirst, "one player needs a test before he gets a load", "players need a test before they get a load");
        Add(unserved, "one need finds no place this week", "needs find no place this week");
        Add(week.Answer.Plan?.Flags.Count ?? 0, "one rule is not kept and flagged", "places where a flagged rule is not kept");
        return care.Count == 0 ? new("Nothing stands out.", "Nobody is out or restricted, and every load comes from a test. Look at the players, not at the sheet, all the same.")
            : new($"Look at this first: {Words.List([.. care.Take(2)])}.", $"{(care.Count > 2 ? $"Also: {Words.List([.. care.Skip(2)])}. " : "")}Names and reasons are below. Restrictions come from licensed staff; the plan does not judge them.", Tone.Loss);
    }
}

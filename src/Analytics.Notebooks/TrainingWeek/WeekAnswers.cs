using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using static System.FormattableString;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>Three answers: what the week does, who gets extra work and why, what needs care.</summary>
internal static class WeekAnswers
{
    private const int NamesShown = 2;

    public static ReportBlock Of(WeekView view) => new Answers(Does(view), Extra(view), Care(view));

    private static Answer Does(WeekView view)
    {
        var week = view.Week;
        if (view.Plan is null)
            return new("No plan yet: rules clash.", Invariant($"{Words.Capital(Count(week.Choice.Sessions.Count, "session"))} asked for, {Words.Players(week.Squad.Players.Count)}. What clashes stands above; needs and loads below still hold."), Tone.Loss);
        if (view.Sessions.Count == 0) return new("No session for you this week.", view.Only is null ? "" : "Your coach knows more.", Tone.Muted);
        var days = view.Sessions.GroupBy(s => s.Slot.Date).ToList();
        var kinds = days.Select(d => Words.List([.. d.Select(s => WeekWords.Kind(s.Kind)).Distinct()])).Distinct().ToList();
        var minutes = days.Select(d => Invariant($"{d.Max(s => s.Slot.Minutes)}"));
        var who = view.Only is null ? $" {Words.Capital(Words.PlayersOf(week.Squad.Players.Count, week.Squad.Players.Count + week.Squad.Out.Count))} train, in {Words.Count(view.Sessions.Select(s => s.Group).Distinct().Count())} groups." : "";
        return new($"{Words.Capital(Count(days.Count, "training day"))}: {Words.List(kinds)}.",
            $"{Words.List([.. days.Select(d => WeekWords.ShortDay(d.Key))])}; {string.Join(", ", minutes)} min with warm-up.{who}", Tone.Gain);
    }

    private static Answer Extra(WeekView view)
    {
        var needs = view.Needs.ToList();
        if (view.Plan is null) needs = [.. view.Players.SelectMany(p => p.Needs.Where(n => n.IsNeed).Select(n => new ServedNeed(p.Id, n.Quality, n.Probability ?? 0, 0, "no plan") { Half = n.Half }))];
        if (needs.Count == 0)
            return new("Extra work: no evidence yet.", $"No test shows anybody behind his group{(TargetsBlock.Of(view).Count > 0 ? " or a target" : "")} clearly enough; all do the balanced default of their group.", Tone.Muted);
        var served = needs.Where(n => n.OwnSets > 0).ToList();
        var by = (served.Count > 0 ? served : needs).GroupBy(n => (n.Quality, n.Half, n.What)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).ToList();
        var verb = view.Plan is null ? "need" : "get";
        var players = (served.Count > 0 ? served : needs).Select(n => n.AthleteId).Distinct().Count();
        var conclusion = view.Only is not null ? $"Your extra work: {Words.List([.. by.Select(g => g.Key.What)])}."
            : $"{Words.Capital(Words.Players(players))} {(players == 1 ? verb + "s" : verb)} extra work on a measured need{(by.Count == 1 ? "" : ", most")} on {by[0].Key.What}.";
        var wrong = needs.Sum(n => 1 - n.Probability);
        var numbers = view.Only is not null
            ? string.Join(" ", needs.Select(n => $"{Words.Capital(n.What)}: {Words.Sure(n.Probability)} sure{(n.OwnSets > 0 ? Invariant($", {n.OwnSets} sets") : "")}."))
            : $"{Words.Capital(string.Join("; ", by.Select(g => $"{g.Key.What}: {Names(view, [.. g.Select(n => n.AthleteId)])}")))}. {(needs.Count == 1 ? "It is" : needs.Min(n => n.Probability) > 0.99 ? "Each is" : "Each is at least")} {Words.Sure(needs.Min(n => n.Probability))} sure; {Words.Wrong(wrong, needs.Count)}.";
        return new(conclusion, numbers, Tone.Plain);
    }

    private static Answer Care(WeekView view)
    {
        var squad = view.Week.Squad;
        List<string> numbers = [];
        void Say(IReadOnlyCollection<string> ids, string what, Func<string, string>? name = null)
        {
            if (ids.Count > 0) numbers.Add(view.Only is null ? $"{what}: {Names(view, [.. ids], name)}." : $"{Words.Capital(what)}.");
        }

        string Noted(string id) => squad.Out.Concat(squad.PartlyOut).Concat(squad.Limited).First(n => n.AthleteId == id).Name;
        var off = view.Notes(squad.Out).Select(n => n.AthleteId).ToList();
        var apart = WeekFlags.Apart(view);
        var limited = view.Notes(squad.Limited).Select(n => n.AthleteId).ToList();
        var testFirst = WeekFlags.TestFirst(view).Select(t => t.AthleteId).ToList();
        var unserved = view.Needs.Where(n => n.OwnSets == 0).ToList();
        var flags = WeekFlags.Of(view).ToList();
        var unread = WeekFlags.UnreadRestrictions(view).Sum(r => Math.Max(r.Rows, 1));
        if (unread > 0) numbers.Add(Invariant($"{Words.Capital(Words.Count(unread))} {(unread == 1 ? "row" : "rows")} of training/restrictions.csv could not be read and {(unread == 1 ? "restricts" : "restrict")} nobody: mend {(unread == 1 ? "it" : "them")} before anybody trains by this plan (list at the end)."));
        Say(off, "Out", Noted);
        Say(apart, "Train apart");
        Say(limited, "Limited, medical staff first", Noted);
        Say(testFirst, "Test first, some loads are open");
        if (unserved.Count > 0) numbers.Add(Invariant($"{Words.Capital(Words.Count(unserved.Count))} {(unserved.Count == 1 ? "need gets" : "needs get")} no own work."));
        if (flags.Count > 0) numbers.Add(Invariant($"{Words.Capital(Words.Count(flags.Count))} {(flags.Count == 1 ? "rule is" : "rules are")} flagged, not kept."));
        var players = off.Concat(apart).Concat(limited).Concat(testFirst).Distinct().Count();
        if (numbers.Count == 0) return new("Nothing needs special care.", "Nobody is out, apart or untested; every rule is kept.", Tone.Plain);
        return new(view.Only is null ? unread > 0 ? "Restrictions are missing from this plan." : players == 0 ? "Needs care: a few open ends." : $"{Words.Capital(Words.Players(players))} {(players == 1 ? "needs" : "need")} care." : "Take care.", string.Join(" ", numbers), Tone.Loss);
    }

    private static string Count(int count, string what) => $"{Words.Count(count)} {what}{(count == 1 ? "" : "s")}";

    private static string Names(WeekView view, IReadOnlyList<string> ids, Func<string, string>? name = null)
    {
        var all = ids.Distinct().ToList();
        List<string> shown = [.. all.Take(all.Count == NamesShown + 1 ? NamesShown + 1 : NamesShown).Select(name ?? view.Name)];
        return Words.List(all.Count > shown.Count ? [.. shown, Invariant($"{all.Count - shown.Count} more")] : shown);
    }
}

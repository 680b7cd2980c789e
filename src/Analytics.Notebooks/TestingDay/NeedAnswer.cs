using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The third answer: what holds players back, measured against the middle of their own group.</summary>
internal static class NeedAnswer
{
    public static Answer Of(DayContext day)
    {
        var needs = day.Needs;
        var named = needs.Athletes.Where(a => a.First is not null).ToList();
        var tested = SquadAnswer.Tested(day);
        if (named.Count == 0)
            return new("What holds each player back: the tests cannot say yet.", WhyNone(day, tested), Tone.Muted);
        var qualities = named.GroupBy(n => n.First!.Quality).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).ToList();
        var top = qualities[0];
        string[] leaders = [.. qualities.TakeWhile(q => q.Count() == top.Count()).Select(q => Words.Name(q.Key))];
        var conclusion = leaders.Length > 1
            ? $"First needs differ: {Words.List(leaders)} lead with {Words.Players(top.Count())} each."
            : $"{Words.Capital(Words.Name(top.Key))} is the commonest first need: {Words.Players(top.Count())}{Where(top)}.";
        var rest = qualities.Skip(leaders.Length).Select(g => $"{Words.Name(g.Key)} {g.Count()}").ToList();
        var numbers = $"{(rest.Count > 0 ? "Then " + Words.List(rest) + ". " : "")}{(named.Count < tested ? $"For {tested - named.Count} of {tested} tested the tests cannot name one. " : "")}"
            + $"Needs are against the player's own group; {Words.Wrong(needs.ExpectedWrong, named.Count)}.";
        return new(conclusion, numbers, Tone.Plain);
    }

    // A player may be left open for want of tests or because two of them disagree, so "nobody is behind" would claim too much.
    private static string WhyNone(DayContext day, int tested)
    {
        var reasons = day.Needs.Athletes.Where(a => day.WasTested(a.AthleteId)).GroupBy(a => a.Undecided!)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).ToList();
        var why = reasons.Count == 1 ? reasons[0].Key + (tested == 1 ? "" : $" (all {tested} tested)") : string.Join("; ", reasons.Select(g => $"{g.Key} ({g.Count()} of {tested})"));
        return $"{Words.Capital(why)}. A need takes at least {Figures.Percent(day.Needs.Threshold)} probability of being behind the own group.";
    }

    // A group is named only when it holds more than half of those players.
    private static string Where(IGrouping<Quality, Need> need)
    {
        var first = need.GroupBy(n => n.Group).OrderByDescending(g => g.Count()).First();
        if (first.Count() * 2 <= need.Count() || first.Count() == 1) return "";
        var many = first.Count() < need.Count() ? $"{Words.Count(first.Count())} of them" : need.Count() == 2 ? "both" : "all";
        return $", {many} in \u201C{first.Key}\u201D";
    }
}

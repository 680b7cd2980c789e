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
            return new("What holds each player back: the tests cannot say yet.",
                $"No player of the {tested} tested is behind his group with at least {Figures.Percent(needs.Threshold)} probability in any quality compared.", Tone.Muted);
        var qualities = named.GroupBy(n => n.First!.Quality).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).ToList();
        var top = qualities[0];
        var shared = qualities.Count > 1 && qualities[1].Count() == top.Count();
        var conclusion = shared
            ? $"First needs differ: {Words.Name(top.Key)} and {Words.Name(qualities[1].Key)} lead with {Words.Count(top.Count())} players each."
            : $"{Words.Capital(Words.Name(top.Key))} is the commonest first need: {Words.Players(top.Count())}{Where(top)}.";
        var rest = qualities.Skip(shared ? 2 : 1).Select(g => $"{Words.Name(g.Key)} {g.Count()}").ToList();
        var numbers = $"{(rest.Count > 0 ? "Then " + Words.List(rest) + ". " : "")}For {tested - named.Count} of {tested} tested the tests cannot name one. "
            + $"Needs are against the player's own group; about {Figures.Plain(needs.ExpectedWrong, 0)} of the {named.Count} may be wrong.";
        return new(conclusion, numbers, Tone.Plain);
    }

    // A group is named only when it holds more than half of those players.
    private static string Where(IGrouping<Quality, Need> need)
    {
        var first = need.GroupBy(n => n.Group).OrderByDescending(g => g.Count()).First();
        return first.Count() * 2 > need.Count() && first.Count() > 1 ? $", {Words.Count(first.Count())} of them {first.Key.ToLowerInvariant()}" : "";
    }
}

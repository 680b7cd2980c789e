using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The first answer: did the squad move, measure by measure.</summary>
internal static class SquadAnswer
{
    public static Answer Of(DayContext day)
    {
        if (day.Before is null && !day.IsFirst)
            return new("What moved: no comparison was asked for.", $"{Words.Capital(Words.Players(Tested(day)))} tested. Name an earlier day in the settings to see what moved.", Tone.Muted);
        if (day.Before is null)
            return new("This is the first testing day: a starting point, not yet a change.", $"{Words.Capital(Words.Players(Tested(day)))} tested. The next day will show what moved.", Tone.Muted);
        SquadChange[] changes = [.. day.Headlines.Select(day.Change).Where(c => c.Mean?.Mean.Interval is not null)];
        if (changes.Length == 0)
            return new("No evidence yet that the squad moved.", TooFew(day), Tone.Muted);
        return new(Conclusion(changes), Numbers(day, changes), ToneOf(changes));
    }

    internal static int Tested(DayContext day) => day.Season.Athletes.Count(a => day.WasTested(a.Id));

    // The mean of one player has no interval.
    private static string TooFew(DayContext day)
        => day.Headlines.Any(m => day.Change(m).Athletes.Count > 0)
            ? $"Only one player did the same test on {Words.ShortDate(day.Before!.Date)} and today; a squad mean needs two."
            : $"No player did the same test on {Words.ShortDate(day.Before!.Date)} and today.";

    private static string Conclusion(IReadOnlyList<SquadChange> changes)
    {
        var better = Named(changes, Verdict.ClearGain);
        var worse = Named(changes, Verdict.ClearLoss);
        var steady = Named(changes, Verdict.TooSmallToMatter);
        string[] up = [.. changes.Where(c => IsMoved(c) && IsBetter(c)).Select(c => Words.Short(c.Metric))];
        string[] down = [.. changes.Where(c => IsMoved(c) && !IsBetter(c)).Select(c => Words.Short(c.Metric))];
        string[] open = [.. changes.Where(c => c.MeanVerdict == Verdict.CannotTellYet && !IsMoved(c)).Select(c => Words.Short(c.Metric))];
        List<string> parts = [];
        if (better.Count > 0) parts.Add($"{Words.List(better)} improved");
        if (worse.Count > 0) parts.Add($"{Words.List(worse)} got worse");
        if (steady.Count > 0) parts.Add($"{Words.List(steady)} moved too little to matter");
        if (up.Length > 0) parts.Add($"{Words.List(up)} {Are(up)} better, perhaps too little to matter");
        if (down.Length > 0) parts.Add($"{Words.List(down)} {Are(down)} worse, perhaps too little to matter");
        if (open.Length > 0) parts.Add(parts.Count == 0
            ? $"no evidence yet that {Words.List(open)} moved"
            : $"no evidence yet on {Words.List(open)}");
        return Words.Capital(string.Join("; ", parts)) + ".";
    }

    private static List<string> Named(IReadOnlyList<SquadChange> changes, Verdict verdict)
        => [.. changes.Where(c => c.MeanVerdict == verdict).Select(c => Words.Short(c.Metric))];

    /// <summary>Whether the mean surely moved although it is not shown that it matters: "no evidence" would be wrong then.</summary>
    private static bool IsMoved(SquadChange change)
        => change.MeanVerdict == Verdict.CannotTellYet && change.Mean!.Mean is { StandardError: > 0, Interval: { } interval } && (interval.Low > 0 || interval.High < 0);

    private static bool IsBetter(SquadChange change) => change.Mean!.Mean.Value > 0 != Words.LowerIsBetter(change.Metric);

    private static string Are(string[] measures) => measures.Length == 1 ? "is" : "are";

    private static string Numbers(DayContext day, IReadOnlyList<SquadChange> changes)
        => "Squad mean: " + string.Join("; ", changes.Select(c =>
        {
            var mean = c.Mean!.Mean;
            return $"{Words.Short(c.Metric)} {day.Unit(c.Metric).ChangeText(mean.Value, mean.Interval)}, {mean.N} players";
        })) + "." + ByChance(changes);

    // The rule is wrong about an unmoved mean as often as it states; several looks add up.
    private static string ByChance(IReadOnlyList<SquadChange> changes)
        => changes.Count > 1 && changes.Any(c => c.MeanVerdict.IsClear())
            ? $" With {Words.Count(changes.Count)} means, chance alone moves one in up to {Figures.Percent(ChanceFlags.Of(changes.Count, changes[0].Rule.LargestFalseFlagRate).AtLeastOne)} of reports."
            : "";

    private static Tone ToneOf(IReadOnlyList<SquadChange> changes)
        => changes.Any(c => c.MeanVerdict == Verdict.ClearLoss) ? Tone.Loss
            : changes.Any(c => c.MeanVerdict == Verdict.ClearGain) ? Tone.Gain : Tone.Muted;
}

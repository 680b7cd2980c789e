using System.Globalization;
using Analytics.Metrics.Profile;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Statistics.Change;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The second answer: how many players changed for real, and how many flags chance alone would give.</summary>
internal static class PlayerAnswer
{
    private const int FewestAlike = 5;

    public static Answer Of(DayContext day)
    {
        if (day.Before is null) return new("Who changed: nothing to compare with yet.", day.IsFirst ? "Changes are shown from the second testing day on." : "Name an earlier day in the settings.", Tone.Muted);
        SquadChange[] changes = [.. day.Headlines.Select(day.Change)];
        var judged = changes.Sum(Judged);
        if (changes.All(c => c.Athletes.Count == 0))
            return new("Who changed: cannot tell yet.", $"No player did the same test on {Words.ShortDate(day.Before.Date)} and today.", Tone.Muted);
        if (judged == 0)
            return new("Who changed: cannot tell yet.", "No player did a test with a known error on both days. Test twice within one week to learn the error of your tests.", Tone.Muted);
        var gained = Count(changes, Verdict.ClearGain);
        var lost = Count(changes, Verdict.ClearLoss);
        var flags = changes.Sum(c => c.Gains + c.Losses);
        var chance = ByChance(changes, judged, day.Profile.Rule.LargestFalseFlagRate);
        // Not "beyond test error": a change beyond it but too small to matter is no clear verdict either.
        var conclusion = gained + lost == 0
            ? "No player clearly gained or lost."
            : $"{Words.Capital(Words.Players(gained))} clearly gained, {(lost == 0 ? "none" : Words.Count(lost))} clearly lost{(flags <= chance.High ? "; chance alone could give as many" : "")}.";
        return new(conclusion, Numbers(changes, judged, flags, chance), lost > gained ? Tone.Loss : gained > 0 ? Tone.Gain : Tone.Muted);
    }

    private static ChanceFlags ByChance(IReadOnlyList<SquadChange> changes, int judged, double rate)
        => ChanceFlags.OfSquad(
            changes.SelectMany(c => c.Athletes.Where(a => a.Reason is null).Select(a => a.AthleteId)).Distinct().Count(),
            changes.Count(c => Judged(c) > 0), rate, judged);

    internal static int Judged(SquadChange change) => change.Athletes.Count(a => a.Reason is null);

    // A player counts once, however many of his measures moved.
    private static int Count(IEnumerable<SquadChange> changes, Verdict verdict)
        => changes.SelectMany(c => c.Athletes.Where(a => a.Verdict == verdict).Select(a => a.AthleteId)).Distinct().Count();

    private static string Numbers(IReadOnlyList<SquadChange> changes, int judged, int flags, ChanceFlags chance)
    {
        var looked = changes.Where(c => Judged(c) > 0).ToList();
        var each = string.Join("; ", looked.Where(c => c.Gains + c.Losses > 0).Select(c => $"{Words.Short(c.Metric)} {c.Gains} better, {c.Losses} worse"));
        string[] still = [.. looked.Where(c => c.Gains + c.Losses == 0).Select(c => Words.Short(c.Metric))];
        var found = each.Length == 0 ? $"{Words.Capital(Words.List(still))}: no clear change"
            : $"{Words.Capital(each)}{(still.Length == 0 ? "" : $"; none in {Words.List(still)}")}. That is {Words.Count(flags)} clear {(flags == 1 ? "change" : "changes")}";
        return string.Create(CultureInfo.InvariantCulture,
            $"{found} in {judged} {(judged == 1 ? "comparison" : "comparisons")} ({chance.Scope}); had nobody changed, chance alone would give at most {chance.Expected:0.#} on average, seldom more than {chance.High}.")
            + Alike(looked);
    }

    // Training seldom moves most of a squad one way in one measure; a surface, a device or a tired day does.
    private static string Alike(IReadOnlyList<SquadChange> changes)
    {
        string[] alike = [.. changes.Where(c => Judged(c) >= FewestAlike && Math.Max(c.Gains, c.Losses) * 2 > Judged(c)).Select(c => Words.Short(c.Metric))];
        return alike.Length == 0 ? "" : $" Most players moved the same way in {Words.List(alike)}: rule out the day itself, such as surface, device or fatigue.";
    }
}

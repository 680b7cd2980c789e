using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Seasons;
using Analytics.Statistics;

namespace Analytics.Metrics.Bench;

/// <summary>Finds what is weak about a metric on the evidence of a card, weightiest first. There are always three: one squad, not held against play, not reviewed.</summary>
internal static class WeakPoints
{
    public static IReadOnlyList<WeakPoint> Of(SketchCard card, BenchRule rule) =>
    [
        .. Repeats(card, rule).Concat(Size(card)).Concat(Overlap(card, rule)).Concat(Values(card)).Concat(Mass(card)).Concat(Moves(card)).Concat(Setting(card)).Concat(Formula(card))
            .OrderByDescending(p => p.Weight).ThenBy(p => p.What, StringComparer.Ordinal),
    ];

    private static IEnumerable<WeakPoint> Repeats(SketchCard card, BenchRule rule)
    {
        var repeats = card.Repeats;
        if (card.Verdict.DecidedBy is { } other)
            yield return new(0.85, "one player decides", $"Without one of the players the verdict would be \u201C{other.Words()}\u201D. Test more players before believing it.");
        if (repeats.Kind == RepeatKind.None)
            yield return new(0.95, "no repeats", $"Nobody did it twice, so nobody knows how far it may be off. Retest {TestQualityRule.Standard.RetestWanted} players within a week.");
        else if (repeats.Kind != RepeatKind.RetestDays)
            yield return new(0.75, "no retest", $"Only {(repeats.Kind == RepeatKind.SameDay ? "attempts of one day repeat" : "occasions weeks apart repeat")}; the error between days is not known. Retest {TestQualityRule.Standard.RetestWanted} players within a week.");
        else if (repeats.Value is { } icc && icc < 0.9)
            yield return new(Math.Clamp(1 - icc, 0, 1), "error", F($"ICC {icc:0.00} ({repeats.Interval!.Value.Low:0.00} to {repeats.Interval.Value.High:0.00}): {100 * (1 - Math.Clamp(icc, 0, 1)):0} % of what it shows on one day is error. Average more attempts, or two days."));
        if (repeats.Kind == RepeatKind.RetestDays && repeats.Athletes < 2 * rule.Fewest)
            yield return new(0.3, "few repeats", $"Only {repeats.Athletes} players stand behind its error.");
    }

    private static IEnumerable<WeakPoint> Size(SketchCard card)
    {
        if (card.Quality.DetectableChange is { } sees && card.Quality.Worthwhile.Value is > 0 and var matters && sees > matters)
            yield return new(Math.Clamp(Math.Log2(sees / matters) / 5, 0, 0.9), "too coarse for one player", F($"Between two single test days a player must change by {sees / matters:0.0} times what matters before it is seen. Use it for groups, or average days."));
    }

    private static IEnumerable<WeakPoint> Overlap(SketchCard card, BenchRule rule)
    {
        if (card.Overlap is not { } overlap) yield break;
        if (overlap.Own is { Value: { } share, Interval: { } i } && i.Low < rule.OwnShareSmall)
            yield return new(Math.Clamp(1 - share, 0, 1) * 0.95, "little of its own", F($"{100 * share:0} % ({100 * i.Low:0} to {100 * i.High:0} %) of what returns is not in {string.Join(" and ", overlap.BestTwo.Select(m => m.Label))}."));
        // The largest of many correlations is large by chance where players are few: its lower limit must be worth a word too.
        else if (overlap.Rows is [{ Size: > 0.6 } row, ..] && (row.WithinGroups ?? row.Squad).Interval is { } limits && Math.Max(limits.Low, -limits.High) > 0.3)
            yield return new(row.Size * row.Size * 0.9, "much like a library metric", F($"Ranks players of a group much as {row.Metric.Label} does (rank correlation {(row.WithinGroups ?? row.Squad).Value:0.00}{Limits(limits)})."));
    }

    private static IEnumerable<WeakPoint> Values(SketchCard card)
    {
        if (card.Quality.UsableShare < TestQualityRule.Standard.LeastUsable)
            yield return new(Math.Clamp(1 - card.Quality.UsableShare, 0, 1) * 0.8, "few players have it", F($"On a usual testing day {100 * card.Quality.UsableShare:0} % of the squad have a value."));
        if (card.Ends.HasFloor || card.Ends.HasCeiling)
            yield return new(0.6, card.Ends.HasFloor ? "floor" : "ceiling", $"{(card.Ends.HasFloor ? card.Ends.AtLowest : card.Ends.AtHighest)} of {card.Ends.N} players share the {(card.Ends.HasFloor ? "lowest" : "highest")} value; it cannot tell them apart.");
        var far = card.Groups.Sum(g => g.Far.Count);
        if (far + card.Ends.OutsideBelieved > 0)
            yield return new(0.3 + 0.4 * Math.Min(1, (double)card.Ends.OutsideBelieved / Math.Max(1, card.Ends.N)), "odd values", $"{far} {(far == 1 ? "value lies" : "values lie")} far from the group, {card.Ends.OutsideBelieved} outside what is believed. Look at these first.");
        if (card.TroubledDays > 0)
            yield return new(0.5 + 0.4 * Math.Min(1, (double)card.TroubledDays / Math.Max(1, card.Values.Values.Count + card.TroubledDays)), "formula fails", $"For {card.TroubledDays} player-days the formula failed; see the list.");
    }

    private static IEnumerable<WeakPoint> Mass(SketchCard card)
    {
        if (card.Mass is { Rank: { } rank } && Math.Abs(rank.Value) > 0.7)
            yield return new(rank.Value * rank.Value * 0.8, "mostly body mass", F($"Rank correlation with body mass {rank.Value:0.00}{Limits(rank.Interval)}; say whether you want that, or divide by a power of mass."));
    }

    private static IEnumerable<WeakPoint> Moves(SketchCard card)
    {
        if (card.Movement is not { } movement)
        {
            yield return new(0.45, "one occasion only", "Nobody was tested on two occasions, so nobody knows whether training moves it.");
            yield break;
        }

        if (movement.Moved == false) yield return new(0.4, "did not move", "The squad's mean change over the season cannot be told from none. Either training did not touch it, or it does not see training.");
        if (movement.Still?.Mean is { Interval: { } i, Value: var still } && !i.Contains(0) && movement.TypicalError is { } error && Math.Abs(still) > 0.5 * error)
            yield return new(0.5, "moves without training", F($"Between the retest days it shifted by {Math.Abs(still) / error:0.0} typical errors for the squad: practice, tiredness or the day."));
    }

    private static IEnumerable<WeakPoint> Setting(SketchCard card)
    {
        var conditions = card.Conditions;
        var elsewhere = conditions.Others.Sum(o => o.Values);
        if (elsewhere > 0) yield return new(0.25 + 0.5 * elsewhere / (elsewhere + card.Values.Values.Count), "several scales", $"{elsewhere} values on another scale ({conditions.Others[0].Series}) are not compared. Test everybody the same way.");
        foreach (var t in conditions.Testers.Where(t => t.Shift.Interval is { } i && !i.Contains(0)).Take(1))
            yield return new(0.6, "depends on the tester", $"Values of {t.Shift.N} players differ between {t.First} and {t.Second}{(t.BothOrders ? "" : ", or between the first and the second day")}.");
        if (conditions.TestersNoted == 0) yield return new(0.14, "tester not noted", "Nobody wrote down who tested, so a difference between testers would not be seen. Add a column \u201Ctester\u201D.");
        if (card.Cost.ExtraMinutes >= 2) yield return new(Math.Clamp(card.Cost.ExtraMinutes / 15, 0, 0.8), "costs time", F($"{card.Cost.ExtraMinutes:0.#} minutes more for every player."));
    }

    private static IEnumerable<WeakPoint> Formula(SketchCard card)
    {
        if (card.Error is { IsLarge: true, IsExplained: false }) yield return new(0.45, "error not understood", card.Error.Explanation);
        if (card.Sketch.Sources.Count == 0) yield return new(0.12, "no published source", "No study stands behind the formula.");
        yield return new(0.11, "one squad", "Tried on this squad only.");
        yield return new(0.105, "not held against play", "Nobody has asked yet whether a better value goes with better play.");
        yield return new(0.10, "not reviewed", "Nobody else has looked at the formula.");
    }

    private static string Limits(Interval? interval) => interval is { } i ? F($" ({i.Low:0.00} to {i.High:0.00})") : "";

    private static string F(FormattableString text) => FormattableString.Invariant(text);
}

using Analytics.Statistics;

namespace Analytics.Metrics.Bench;

/// <summary>Applies the rule.</summary>
internal static class VerdictReason
{
    public static (BenchVerdict Kind, string Why) Of(int athletes, Repeatability repeats, LibraryOverlap? overlap, BenchRule rule) => Of(athletes, repeats, new Lazy<LibraryOverlap?>(overlap), rule);

    /// <summary>The same with an overlap that is worked out only where it decides.</summary>
    public static (BenchVerdict Kind, string Why) Of(int athletes, Repeatability repeats, Lazy<LibraryOverlap?> lazyOverlap, BenchRule rule)
    {
        if (athletes < rule.Fewest) return (BenchVerdict.NoValues, $"{(athletes switch { 0 => "No player has a value", 1 => "One player has a value", _ => $"{athletes} players have a value" })}; {rule.Fewest} are needed.");
        if (repeats.Interval is { } icc && icc.Low <= 0)
        {
            var figure = Text(repeats.Value!.Value, icc);
            return icc.High < rule.NoiseBelow
                ? (BenchVerdict.Noise, $"{(repeats.Kind == RepeatKind.SameDay ? "The attempts of a day do not tell players apart" : $"On {Days(repeats)} it does not return")}: ICC {figure}, which holds 0. A player's value says nothing about his next one.")
                : (BenchVerdict.CannotTellYet, $"{repeats.Athletes} players with repeats are too few: ICC {figure}, anything from noise to a good test.");
        }

        var overlap = lazyOverlap.Value;
        if (overlap?.Rows is [{ WithinGroups: { } same } row, ..] && (same.Interval is { } i ? Math.Min(Math.Abs(i.Low), Math.Abs(i.High)) >= rule.SameOrder && i.Low * i.High > 0 : Math.Abs(same.Value) == 1))
            return (BenchVerdict.NothingNew, FormattableString.Invariant($"It puts players of a group in the same order as {Lower(row.Metric.Label)}: rank correlation {same.Value:0.00}."));
        if (overlap?.Own is { Value: { } share, Interval: { } own })
        {
            var names = Names(overlap);
            var figure = FormattableString.Invariant($"{100 * share:0} % ({100 * own.Low:0} to {100 * own.High:0} %)");
            if (rule.IsLittle(overlap.Own)) return (BenchVerdict.NothingNew, $"Of what returns on the second day only {figure} is its own; the rest is in {names}.");
            if (overlap.Own.Returns < rule.SurelyReturns) return (BenchVerdict.CannotTellYet, GroupsOnly);
            if (rule.IsItsOwn(overlap.Own) && repeats.Interval is { } known)
                return (BenchVerdict.SaysSomethingNew, $"It returns (ICC {Text(repeats.Value!.Value, known)}), and of what returns {figure} is in no pair of library metrics, the nearest being {names}.");
            return (BenchVerdict.CannotTellYet, $"Of what returns on the second day {figure} is its own beside {names}{(own.High < rule.OwnShareSmall ? $", but with {overlap.Own.N} players two of many metrics give most of anything by chance; {rule.FewestForShare} are needed." : ": it may be little or much.")}");
        }

        if (overlap?.Own is not null) return (BenchVerdict.CannotTellYet, GroupsOnly);
        if (overlap?.GivenByTwo is { } given && given >= rule.GivenByTwo)
            return (BenchVerdict.NothingNew, FormattableString.Invariant($"{Names(overlap)} give {100 * given:0} % of the differences between players of a group."));
        return repeats.Kind == RepeatKind.RetestDays
            ? (BenchVerdict.CannotTellYet, "It returns, but no two library metrics were done by enough of the same players on both days to say what is new in it.")
            : (BenchVerdict.CannotTellYet, "Too few players have it on two days within a week, so what it says cannot be told from its error.");
    }

    // Body mass and position make a value return over the squad; neither is news.
    private const string GroupsOnly = "It returns over the squad, but between players of a group that cannot be told from noise: it may do no more than tell groups apart.";

    private static string Days(Repeatability repeats) => repeats.Kind switch
    {
        RepeatKind.RetestDays => "the retest day",
        _ => "the next occasion, weeks later,",
    };

    private static string Names(LibraryOverlap overlap) => string.Join(" and ", overlap.BestTwo.Select(m => Lower(m.Label)));

    private static string Lower(string label) => label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    private static string Text(double value, Interval interval) => FormattableString.Invariant($"{value:0.00} ({interval.Low:0.00} to {interval.High:0.00})");
}

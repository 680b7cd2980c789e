using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Planning.Rules;

namespace Analytics.Planning.Needs;

/// <summary>The reasons in words, and the age of tests.</summary>
internal sealed class NeedWords(Func<Metric, double, string>? show, DateOnly today, PlanRules rules)
{
    public bool IsExpired(PlayerTest test) => rules.IsOn(RuleIds.TestExpiresAfter) && Age(test) > rules.Value(RuleIds.TestExpiresAfter);

    public string Expired(PlayerTest test) => string.Create(CultureInfo.InvariantCulture,
        $"the last test of it, {Name(test.Metric)} on {Date(test)}, is {Age(test)} days old; after {rules.Value(RuleIds.TestExpiresAfter):0.#} it says nothing about today");

    public static string NotComparable(PlayerTest test) => $"{Name(test.Metric)} on {Date(test)} cannot be compared: {test.Reason ?? test.Standing?.Reason ?? "the day does not tell how sure it is"}";

    /// <summary>"back squat 1RM 142.5 kg on 2 March 2026: 91 % likely worse than the middle of his group, 160.0 kg, by more than 2.1 kg".</summary>
    public string Said(TestJudged judged)
    {
        var (test, standing) = (judged.Test, judged.Test.Standing!);
        var against = judged.Target is { } target ? $"the coach's target, {Show(test.Metric, target)}"
            : $"the middle of his group, {Show(test.Metric, standing.Middle)}" + (test.Margin > 0 ? $", by more than {Show(test.Metric, test.Margin.Value)}" : "");
        string[] remarks = [.. standing.Value.Doubts, test.Remark, IsOld(test) ? string.Create(CultureInfo.InvariantCulture, $"old: {Age(test)} days") : ""];
        return $"{Name(test.Metric)} {Show(test.Metric, standing.Value.Value)} on {Date(test)}: {Percent(judged.Probability!.Value)} likely worse than {against}"
            + string.Concat(remarks.Where(r => r.Length > 0).Select(r => "; " + r));
    }

    public string NotEnough() => rules.IsOn(RuleIds.NeedProbability)
        ? string.Create(CultureInfo.InvariantCulture, $"; a need takes {rules.Value(RuleIds.NeedProbability):0.#} %") : "; needs are switched off";

    private bool IsOld(PlayerTest test) => rules.IsOn(RuleIds.TestOldAfter) && Age(test) > rules.Value(RuleIds.TestOldAfter);

    private int Age(PlayerTest test) => today.DayNumber - test.Date.DayNumber;

    private string Show(Metric metric, double value) => show?.Invoke(metric, value)
        ?? value.ToString("F" + metric.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) + (metric.Unit == "1" ? "" : " " + metric.Unit);

    private static string Date(PlayerTest test) => test.Date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    // "Back squat 1RM" inside a sentence, but "RSI" as it is.
    private static string Name(Metric metric)
        => metric.Label.Length > 1 && char.IsLower(metric.Label[1]) ? char.ToLowerInvariant(metric.Label[0]) + metric.Label[1..] : metric.Label;

    // Never called certain.
    private static string Percent(double share)
        => share > 0.99 ? "over 99 %" : share < 0.01 ? "under 1 %" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");
}

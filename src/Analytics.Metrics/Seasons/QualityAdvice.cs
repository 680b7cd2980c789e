using System.Globalization;
using Analytics.Metrics.Profile;

namespace Analytics.Metrics.Seasons;

/// <summary>Applies the rule to what is known of a test.</summary>
internal static class QualityAdvice
{
    public static (TestAdvice Advice, string Why) Of(TestQuality test, SquadProfile profile)
    {
        var rule = test.Rule;
        var retest = $"retest {Math.Min(test.SquadSize, Math.Max(rule.RetestWanted, profile.MinimumRetested))} players within a week";
        if (test.Level is null) return (TestAdvice.CannotTellYet, "nobody has a value on the scale compared.");
        if (!test.Reliability.HoldsDayToDayVariation || test.TypicalError is null)
            return (TestAdvice.CannotTellYet, $"no error between days is known; {retest}.");
        if (test.SignalToNoise is not { } signal || test.SignalToNoiseInterval is not { } limits)
            return (TestAdvice.CannotTellYet, "too few athletes to compare within groups on the first occasion.");

        var words = Text($"players of a group differ by {signal:0.0} ({limits.Low:0.0} to {limits.High:0.0}) typical errors");
        if (limits.Low < rule.DropBelow && limits.High >= rule.KeepFrom)
            return (TestAdvice.CannotTellYet, Text($"{words}, which may be good or bad; {retest}."));
        if (limits.High < rule.DropBelow)
        {
            return test.Reliability.Source == ErrorSource.SeasonRetest
                ? (TestAdvice.Drop, Text($"{words}, so it tells mostly its own error{Minutes(test)}."))
                : (TestAdvice.CannotTellYet, Text($"by another group's error {words}; {retest} to have your own."));
        }

        if (signal < rule.KeepFrom)
            return (TestAdvice.Mend, Text($"{words}, less than {rule.KeepFrom:0.#}; average more attempts or two days, and test the same way every time{Days(test)}."));
        return test.UsableShare < rule.LeastUsable
            ? (TestAdvice.Mend, Text($"{words}, but only {100 * test.UsableShare:0} % of the squad have a value on the scale compared on a usual day{Elsewhere(test)}."))
            : (TestAdvice.Keep, Text($"{words}{Days(test)}."));
    }

    // A test may tell players apart and yet be too coarse for what one of them may gain; both are said.
    private static string Days(TestQuality test) => test.DaysForAthlete is { } one && test.DaysForGroup is { } group
        ? one > test.Rule.MostDays
            ? Text($"; too coarse for a worthwhile change of one player, which would take {Count(one)} on each occasion; of a group of {test.GroupSize} {Count(group)}")
            : Text($"; a worthwhile change takes {Count(one)} on each occasion to see in one player, {Count(group)} in a group of {test.GroupSize}")
        : "";

    // A lower box for heavy players or a shorter gap may be the coach's choice for their safety, so nobody is told to test all alike.
    private static string Elsewhere(TestQuality test) => test.ValuesElsewhere > 0
        ? Text($"; {test.ValuesElsewhere} values measured another way stand apart: judge those players among themselves, or settle on one way that suits all")
        : "; find out who is missed and why";

    private static string Minutes(TestQuality test) => test.SquadMinutes is > 0 and var minutes ? Text($" and costs {minutes:0} minutes of a station a test day") : "";

    private static string Count(int days) => Text($"{days} test {(days == 1 ? "day" : "days")}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

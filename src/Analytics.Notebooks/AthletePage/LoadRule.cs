using System.Globalization;
using Analytics.Planning.Loads;
using Analytics.Planning.Rules;

namespace Analytics.Notebooks.AthletePage;

/// <summary>From a test to the next loads of the page: its two schemes on what <see cref="LoadBase"/> says per cent are of. The rule stands in docs/athlete-page.md.</summary>
internal static class LoadRule
{
    /// <summary>From this age on the lower side of the range counts.</summary>
    public static int OldAfterDays => (int)PlanRules.Standard.Value(RuleIds.TestOldAfter);

    /// <summary>From this age on a test says nothing about today.</summary>
    public static int ExpiredAfterDays => (int)PlanRules.Standard.Value(RuleIds.TestExpiresAfter);

    public static NextLoad Of(KnownMaximum test, DateOnly today, LoadUnit bar)
    {
        NextLoad None(string why) => new(test, [], 0, false, [], why);
        var from = LoadBase.Of(test, today, PlanRules.Standard);
        if (from.Gap is { } gap) return None(gap == BaseGap.Expired ? string.Create(CultureInfo.InvariantCulture, $"last tested {from.AgeDays / 7} weeks ago") : "you were injured since this test");
        var schemes = LoadScheme.For(test.Lift);
        if (schemes.Count == 0) return None("added weight on body weight: per cent of it do not fit");

        List<PlannedSet> sets = [.. schemes.Select(s => Planned(s, from, bar))];
        return sets.TrueForAll(s => s.Load <= 0) ? None("the loads would be below the smallest step of the bar") : new(test, sets, from.Kilograms, from.IsLowerSide, from.Reasons, null);
    }

    private static PlannedSet Planned(LoadScheme scheme, LoadBase from, LoadUnit bar)
    {
        var wanted = from.Kilograms * scheme.Percent / 100;
        var load = bar.Down(Math.Min(wanted, from.CapKilograms));
        return new(scheme, Math.Max(load, 0), load > from.Test.HeaviestKilograms * bar.PerKilogram + 1e-9, wanted > from.CapKilograms);
    }
}

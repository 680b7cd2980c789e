using System.Globalization;

namespace Analytics.Notebooks.AthletePage;

/// <summary>From a test to the next loads. The rule stands in docs/athlete-page.md; its limits are our choice unless a source is named.</summary>
internal static class LoadRule
{
    /// <summary>From this age on the lower side of the range counts (our choice, no source).</summary>
    public const int StaleAfterDays = 42;

    /// <summary>From this age on a test says nothing about today (our choice, no source).</summary>
    public const int ExpiredAfterDays = 182;

    /// <summary>A range whose lower side lies further down than this share of the value is wide (our choice, no source).</summary>
    public const double Wide = 0.10;

    /// <summary>Taken off where no error is known (our choice, no source).</summary>
    public const double UnknownError = 0.10;

    public static NextLoad Of(LiftTest test, DateOnly today, LoadUnit bar)
    {
        var age = today.DayNumber - test.Date.DayNumber;
        NextLoad None(string why) => new(test, [], 0, false, [], why);
        if (age > ExpiredAfterDays) return None(string.Create(CultureInfo.InvariantCulture, $"last tested {age / 7} weeks ago"));
        if (test.HurtSince is not null) return None("you were injured since this test");
        var schemes = LoadScheme.For(test.Lift);
        if (schemes.Count == 0) return None("added weight on body weight: per cent of it do not fit");

        var low = Math.Min(test.Range?.Low ?? test.Kilograms * (1 - UnknownError), test.Kilograms);
        List<string> reasons = [];
        if (test.Doubt is { } doubt) reasons.Add(doubt);
        else if (test.Range is null) reasons.Add("no error known, a tenth taken off");
        else if (test.Kilograms - low > Wide * test.Kilograms) reasons.Add("wide range");
        if (age > StaleAfterDays) reasons.Add(string.Create(CultureInfo.InvariantCulture, $"{age / 7} weeks old"));

        var from = reasons.Count > 0 ? low : test.Kilograms;
        // No load is raised on a doubtful estimate: not above what was lifted.
        var cap = test.Doubt is null ? double.PositiveInfinity : test.HeaviestKilograms;
        List<PlannedSet> sets = [.. schemes.Select(s => Planned(s, from * s.Percent / 100, cap, test.HeaviestKilograms, bar))];
        return sets.TrueForAll(s => s.Load <= 0) ? None("the loads would be below the smallest step of the bar") : new(test, sets, from, reasons.Count > 0, reasons, null);
    }

    private static PlannedSet Planned(LoadScheme scheme, double wanted, double cap, double heaviest, LoadUnit bar)
    {
        var load = bar.Down(Math.Min(wanted, cap));
        return new(scheme, Math.Max(load, 0), load > heaviest * bar.PerKilogram + 1e-9, wanted > cap);
    }
}

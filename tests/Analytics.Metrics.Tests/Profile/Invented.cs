using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>A trial that simply is a number, for tests of the profile alone.</summary>
internal sealed record NumberTrial : Trial
{
    public required double Value { get; init; }

    public string Series { get; init; } = "";

    public double? Error { get; init; }

    public string? Doubt { get; init; }

    public int? Degrees { get; init; }

    public EquationError? Equation { get; init; }

    /// <summary>Which invented metric it belongs to.</summary>
    public string Metric { get; init; } = "m";
}

/// <summary>Invented metrics and days.</summary>
internal static class Invented
{
    public static readonly DateOnly March = new(2026, 3, 2);
    public static readonly DateOnly April = new(2026, 4, 13);

    public static Metric Metric(
        string id = "m", Direction better = Direction.Higher, TrialRule rule = TrialRule.Best,
        Quality quality = Quality.MaximalStrength, PublishedError? published = null) => new()
    {
        Id = id,
        Label = id,
        Unit = "kg",
        Decimals = 1,
        Better = better,
        Quality = quality,
        Rule = rule,
        FromTrials = day => day.Of<NumberTrial>().Where(t => t.Metric == id).Select(t => new TrialValue(t.Value, t.Error, t.Series, t.Doubt, t.Degrees)
        {
            Equation = t.Equation,
            HowMade = t.Equation is { } e ? FormattableString.Invariant($"estimated from {e.Repetitions} repetitions") : "",
        }),
        PlausibleLow = 0,
        PlausibleHigh = 1000,
        Meaning = "",
        Formula = "",
        Sources = [],
        PublishedError = published,
    };

    public static NumberTrial Number(double value, string series = "", double? error = null, string? doubt = null, string metric = "m")
        => new() { AthleteId = "", Date = March, Value = value, Series = series, Error = error, Doubt = doubt, Metric = metric };

    /// <summary>A value that an equation made from repetitions.</summary>
    public static NumberTrial Estimated(double value, double personal, double shared = 0, double fresh = 0, double? repetitions = 5, string equation = "E")
        => Number(value) with { Equation = new(equation, personal, shared, fresh, repetitions) };

    public static AthleteDay Day(string id, DateOnly date, params Trial[] trials) => new() { AthleteId = id, Date = date, Trials = trials };

    public static AthleteDay Day(string id, params double[] values) => Day(id, March, [.. values.Select(v => (Trial)Number(v))]);

    /// <summary>One value an athlete, a1, a2, ...; NaN leaves the athlete out.</summary>
    public static IReadOnlyList<AthleteDay> Days(DateOnly date, params double[] values)
        => [.. values.Select((v, i) => (v, Id: $"a{i + 1}")).Where(x => !double.IsNaN(x.v)).Select(x => Day(x.Id, date, Number(x.v)))];

    public static IReadOnlyList<SquadMember> Squad(int athletes, params string[] groups)
        => [.. Enumerable.Range(0, athletes).Select(i => new SquadMember($"a{i + 1}", groups.Length == 0 ? "Line" : groups[i % groups.Length]))];
}

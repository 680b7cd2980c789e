namespace Analytics.Simulation.Demo;

/// <summary>The days of the demo season.</summary>
public static class SeasonCalendar
{
    public static readonly DateOnly SeasonStart = new(2026, 1, 5);
    public static readonly DateOnly SeasonEnd = new(2026, 7, 31);

    public const int Baseline = 0, Retest = 1, March = 2, April = 3, June = 4;

    /// <summary>Testing days; the second repeats the first within the week.</summary>
    public static IReadOnlyList<DateOnly> TestingDays { get; } =
    [
        new(2026, 1, 19), new(2026, 1, 22), new(2026, 3, 2), new(2026, 4, 13), new(2026, 6, 8),
    ];
}

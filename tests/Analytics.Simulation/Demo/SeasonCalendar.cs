namespace Analytics.Simulation.Demo;

/// <summary>The days of the demo season.</summary>
public static class SeasonCalendar
{
    public static readonly DateOnly SeasonStart = new(2026, 1, 5);
    public static readonly DateOnly SeasonEnd = new(2026, 7, 31);

    public const int Baseline = 0, Retest = 1, March = 2, April = 3, June = 4, EndRetest = 5;

    /// <summary>Day of a retest at the end of the season, which the kept season does not have.</summary>
    private static readonly DateOnly s_endRetest = new(2026, 6, 11);

    /// <summary>Testing days; the second repeats the first within the week.</summary>
    public static IReadOnlyList<DateOnly> TestingDays { get; } =
    [
        new(2026, 1, 19), new(2026, 1, 22), new(2026, 3, 2), new(2026, 4, 13), new(2026, 6, 8),
    ];

    /// <summary>The testing days of a season made with these options.</summary>
    public static IReadOnlyList<DateOnly> Of(DemoOptions options) => options.WithEndRetest ? [.. TestingDays, s_endRetest] : TestingDays;

    /// <summary>The date of a testing day by its number, the retest at the end included.</summary>
    public static DateOnly DateOf(int day) => day == EndRetest ? s_endRetest : TestingDays[day];
}

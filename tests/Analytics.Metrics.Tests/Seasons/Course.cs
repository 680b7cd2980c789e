using Analytics.Metrics.Profile;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Seasons;

/// <summary>An invented season: 24 athletes in 2 groups, levels 100 to 123 kg, errors that are written out, not drawn.</summary>
internal static class Course
{
    public static readonly DateOnly Baseline = new(2026, 1, 19), Retest = new(2026, 1, 22), March = new(2026, 3, 2), June = new(2026, 6, 8);

    public static IReadOnlyList<SquadMember> Squad { get; } = [.. Enumerable.Range(1, 24).Select(i => new SquadMember($"a{i}", i % 2 == 0 ? "Backs" : "Line"))];

    /// <summary>Level of athlete i (from 1).</summary>
    public static double Level(int i) => 99 + i;

    /// <summary>Test error of athlete i on a day: −1.5 to 1.5 kg, another for each pair of athlete and day, SD about 0.9.</summary>
    public static double Error(int i, int day) => ((i * 7 + day * 5 + i * day * 3) % 11 - 5) * 0.3;

    /// <summary>A testing day on which athlete i lifts his level, plus gain, plus error; athletes for whom it is NaN are missing.</summary>
    public static IReadOnlyList<AthleteDay> Day(DateOnly date, int number, Func<int, double> gain)
        => [.. Enumerable.Range(1, 24).Where(i => !double.IsNaN(gain(i))).Select(i => Invented.Day($"a{i}", date, Invented.Number(Level(i) + gain(i) + Error(i, number))))];

    /// <summary>Backs gain 8 kg by June, linemen nothing; half of it by March.</summary>
    public static IReadOnlyList<IReadOnlyList<AthleteDay>> Days { get; } =
    [
        Day(Baseline, 0, _ => 0), Day(Retest, 1, _ => 0), Day(March, 2, i => i % 2 == 0 ? 4 : 0), Day(June, 3, i => i % 2 == 0 ? 8 : 0),
    ];

    public static SquadProfile Profile { get; } = new() { Squad = Squad, Retests = [RepeatDays.Pair(Days[0], Days[1])] };

    public static IReadOnlyList<IReadOnlyList<AthleteDay>> Weekly(int weeks, Func<int, double> gainAtWeek)
        => [.. Enumerable.Range(0, weeks).Select(w => Day(new DateOnly(2016, 8, 1).AddDays(7 * w), w, _ => gainAtWeek(w)))];
}

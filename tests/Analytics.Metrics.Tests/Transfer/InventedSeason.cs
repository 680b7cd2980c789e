using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Transfer;

/// <summary>
/// An invented season of two lifts and two field tests on a baseline, its retest and three more days. Gains of lift_a (kg) and of run_a (s, less is better) are
/// linked as told; lift_b and run_b have independent gains; all have errors, part of them the form of the day.
/// </summary>
internal sealed class InventedSeason
{
    private static readonly DateOnly[] s_dates = [new(2026, 1, 19), new(2026, 1, 22), new(2026, 3, 2), new(2026, 4, 13), new(2026, 6, 8)];

    public const double ErrorKilograms = 3, ErrorSeconds = 0.02;

    public InventedSeason(int athletes, double link, double form = 0.2, int seed = 7, double secondsGain = 0.05)
    {
        var random = new Random(seed);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var days = s_dates.Select(_ => new List<AthleteDay>()).ToArray();
        for (var i = 0; i < athletes; i++)
        {
            var (g, h, own) = (Normal(), Normal(), Normal());
            var run = link * g + Math.Sqrt(1 - link * link) * own;
            var other = Normal();
            for (var d = 0; d < s_dates.Length; d++)
            {
                var reached = (s_dates[d].DayNumber - s_dates[0].DayNumber) / 140.0;
                var (shared, rest) = (Math.Sqrt(form) * Normal(), Math.Sqrt(1 - form));
                days[d].Add(new()
                {
                    AthleteId = $"a{i + 1}", Date = s_dates[d], BodyMass = Mass.FromKilograms(90 + i % 7),
                    Trials =
                    [
                        Lifted("lift_a", 140 + i % 9 + reached * (10 + 8 * g) + ErrorKilograms * (shared + rest * Normal())),
                        Lifted("lift_b", 110 + i % 5 + reached * (7 + 8 * h) + ErrorKilograms * (shared + rest * Normal())),
                        Ran("run_a", 1.8 + i % 4 * 0.01 - reached * (0.05 + secondsGain * run) - ErrorSeconds * (shared + rest * Normal())),
                        Ran("run_b", 4.5 + i % 6 * 0.01 - reached * (0.05 + secondsGain * other) - ErrorSeconds * (shared + rest * Normal())),
                    ],
                });
            }
        }

        Days = days;
        Profile = new() { Squad = Invented.Squad(athletes), Retests = [RepeatDays.Pair(days[0], days[1])] };
    }

    public List<AthleteDay>[] Days { get; }

    public SquadProfile Profile { get; }

    public static IReadOnlyList<Metric> Lifts { get; } = [Lift("lift_a"), Lift("lift_b")];

    public static IReadOnlyList<Metric> Runs { get; } = [Run("run_a"), Run("run_b")];

    /// <summary>The value of one of them on a day.</summary>
    public static double Value(AthleteDay day, string id) => day.Of<LiftSet>().Where(t => t.Lift == id).Select(t => t.Load.Kilograms)
        .Concat(day.Of<AgilityTrial>().Where(t => t.Test == id).Select(t => t.Time.Seconds)).Single();

    // Inputs are looked for by taking trials away, so a value may be missing.
    private static IEnumerable<TrialValue> Values(AthleteDay day, string id)
        => day.Trials.Any(t => t is LiftSet l ? l.Lift == id : t is AgilityTrial a && a.Test == id) ? [new TrialValue(Value(day, id))] : [];

    private static Metric Lift(string id) => Invented.Metric(id) with { PlausibleLow = 1, FromTrials = day => Values(day, id) };

    private static Metric Run(string id) => Invented.Metric(id, Direction.Lower) with { Unit = "s", PlausibleLow = 0.5, Decimals = 2, FromTrials = day => Values(day, id) };

    private static LiftSet Lifted(string id, double kilograms) => new() { AthleteId = "", Date = s_dates[0], Lift = id, Load = Mass.FromKilograms(kilograms), Repetitions = 1 };

    private static AgilityTrial Ran(string id, double seconds) => new() { AthleteId = "", Date = s_dates[0], Test = id, Timing = TimingMethod.Electronic, Time = Duration.FromSeconds(seconds) };
}

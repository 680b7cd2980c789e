using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Side = Analytics.Metrics.Trials.Side;

namespace Analytics.Metrics.Tests.Catalogue;

/// <summary>A day with a trial of every kind, so that every metric has something to say; and the same day with every reading 0.</summary>
internal static class FullDay
{
    public static AthleteDay Good { get; } = Make(1);

    public static AthleteDay Zeros { get; } = Make(0);

    private static AthleteDay Make(double x) => Days.With(
    [
        new BodyMeasure { AthleteId = "a1", Date = Days.Date, BodyMass = Mass.FromKilograms(90 * x), Stature = Length.FromMetres(1.85 * x) },
        .. Jumps(x), .. Throws(x), .. Lifts(x), .. Sprints(x), .. Agility(x), .. Turns(x), Contact.LinearRunner.Trial(farUp: 0.3),
        Days.Stair(1.05 * x, 0.5 * x),
    ]) with
    {
        BodyMass = Mass.FromKilograms(90 * x),
        Stature = Length.FromMetres(1.85 * x),
    };

    private static IEnumerable<Trial> Jumps(double x)
        => from kind in Enum.GetValues<JumpKind>()
           from method in Enum.GetValues<JumpMethod>()
           select Days.Jump(kind, method) with
           {
               Distance = Length.FromMetres(2.6 * x),
               FlightTime = Duration.FromSeconds(0.55 * x),
               ContactTime = Duration.FromSeconds(0.2 * x),
               ObstacleHeight = Length.FromMetres(0.3 * x),
               PushOffDistance = Length.FromMetres(0.4 * x),
           };

    private static IEnumerable<Trial> Throws(double x)
        => from kind in new[] { "overhead_back", "seated_chest", "standing_chest", "rotational" }
           select Days.Throw(kind, 3 * x, 9 * x);

    private static IEnumerable<Trial> Lifts(double x)
        => from lift in new[] { "back_squat", "front_squat", "bench_press", "deadlift", "power_clean", "hang_clean", "leg_press" }
           from repetitions in new[] { 1, 3 }
           select Days.Lift(lift, 110 * x, repetitions) with { BarRise = Length.FromMetres(0.9 * x), PullTime = Duration.FromSeconds(0.8 * x) };

    // Sprints of top speed 9 m/s and time constant 1.2 s, by the exponential model, to 0.01 s; gates in yards and in metres.
    private static IEnumerable<Trial> Sprints(double x)
        => from timing in Enum.GetValues<TimingMethod>()
           from splits in new Split[][]
           {
               [.. new[] { (5, 1.30), (10, 1.99), (20, 3.14), (30, 4.21), (40, 5.25) }
                   .Select(s => new Split(Length.FromYards(s.Item1 * x), Duration.FromSeconds(s.Item2 * x)))],
               [.. new[] { (5, 1.37), (10, 2.10), (20, 3.35), (30, 4.51), (40, 5.63) }
                   .Select(s => new Split(Length.FromMetres(s.Item1 * x), Duration.FromSeconds(s.Item2 * x)))],
           }
           select new SprintTrial { AthleteId = "a1", Date = Days.Date, Timing = timing, Start = StartType.StandingBeam, Splits = splits };

    private static IEnumerable<Trial> Agility(double x)
        => from test in new[] { ("pro_agility", 4.5), ("505", 2.4), ("three_cone", 7.3) }
           select new AgilityTrial
           {
               AthleteId = "a1", Date = Days.Date, Test = test.Item1, Timing = TimingMethod.Electronic, Time = Duration.FromSeconds(test.Item2 * x),
           };

    // Both sides of the 505 and a 10 m sprint give the deficit; the run of unknown side above gives none.
    private static IEnumerable<Trial> Turns(double x)
        => from run in new[] { (Side.Left, 2.41), (Side.Right, 2.47) }
           select new AgilityTrial
           {
               AthleteId = "a1", Date = Days.Date, Test = "505", Timing = TimingMethod.Electronic, Side = run.Item1, Time = Duration.FromSeconds(run.Item2 * x),
           };
}

using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Catalogue;

/// <summary>Athlete days for tests.</summary>
internal static class Days
{
    public static readonly DateOnly Date = new(2026, 3, 2);

    public static AthleteDay Empty { get; } = new() { AthleteId = "a1", Date = Date, Trials = [] };

    /// <summary>A weighed athlete (90 kg, 185 cm) with these trials.</summary>
    public static AthleteDay With(params Trial[] trials) => Empty with
    {
        Trials = trials,
        BodyMass = Mass.FromKilograms(90),
        BodyMassDate = Date,
        Stature = Length.FromCentimetres(185),
    };

    public static JumpTrial Jump(JumpKind kind, JumpMethod method = JumpMethod.Mat) => new() { AthleteId = "a1", Date = Date, Kind = kind, Method = method };

    public static ThrowTrial Throw(string kind, double kilograms, double metres, Side? side = null) => new()
    {
        AthleteId = "a1", Date = Date, Throw = kind, Ball = Mass.FromKilograms(kilograms), Distance = Length.FromMetres(metres), Side = side,
    };

    public static StairTrial Stair(double riseMetres, double seconds) => new()
    {
        AthleteId = "a1", Date = Date, Rise = Length.FromMetres(riseMetres), Time = Duration.FromSeconds(seconds),
    };

    public static LiftSet Lift(string lift, double kilograms, int repetitions) => new()
    {
        AthleteId = "a1", Date = Date, Lift = lift, Load = Mass.FromKilograms(kilograms), Repetitions = repetitions,
    };
}

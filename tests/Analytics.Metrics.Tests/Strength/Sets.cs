using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

internal static class Sets
{
    public static readonly DateOnly Day = new(2026, 3, 2);

    public static LiftSet Of(string lift, double kilograms, int repetitions, double? reserve = null) => new()
    {
        AthleteId = "a1",
        Date = Day,
        Lift = lift,
        Load = Mass.FromKilograms(kilograms),
        Repetitions = repetitions,
        RepetitionsInReserve = reserve,
    };

    public static AthleteDay DayOf(Mass? bodyMass, DateOnly? weighed, params Trial[] trials) => new()
    {
        AthleteId = "a1",
        Date = Day,
        Trials = trials,
        BodyMass = bodyMass,
        BodyMassDate = weighed,
    };
}

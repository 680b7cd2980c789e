using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Files;

/// <summary>A main lift of a training day over the six weeks: sets, repetitions and share of the maximum of April, with a lighter last week.</summary>
/// <param name="Lift">Identifier of the lift.</param>
/// <param name="Maximum">The maximum the shares are of, lb.</param>
/// <param name="Plan">One entry a week.</param>
public sealed record MainLift(string Lift, Func<Ability, double> Maximum, IReadOnlyList<(int Sets, int Repetitions, double Share)> Plan)
{
    /// <summary>Weeks planned.</summary>
    public const int Weeks = 6;

    /// <summary>Smallest step on the bar, lb.</summary>
    private const double Step = 5;

    private static readonly (int, int, double)[] Strength = [(4, 5, 0.75), (4, 5, 0.78), (5, 4, 0.81), (5, 3, 0.85), (5, 3, 0.87), (3, 3, 0.75)];

    private static readonly (int, int, double)[] Power = [(5, 3, 0.72), (5, 3, 0.75), (5, 2, 0.78), (5, 2, 0.80), (6, 2, 0.82), (3, 2, 0.70)];

    /// <summary>The main lifts of a day, by what it is for; none on days without a bar.</summary>
    public static IReadOnlyList<MainLift> Of(string focus) => focus switch
    {
        "max_strength" => [new("back_squat", a => a.SquatPounds, Strength), new("bench_press", a => a.BenchPounds, Strength)],
        "power" => [new("power_clean", a => a.CleanPounds, Power)],
        _ => [],
    };

    /// <summary>What the athlete did: now and then a set less or more, loads to about 2 %, from a stream of its own that knows nothing of gains.</summary>
    public (int Sets, int Repetitions, double Pounds) Of(ulong seed, Player player, int week)
    {
        var random = RandomNumbers.For(seed, "exercise " + Lift, player.Index, week);
        var (sets, repetitions, share) = Plan[week];
        sets += random.Uniform() switch { < 0.20 => -1, > 0.90 => 1, _ => 0 };
        var pounds = Maximum(player.On(SeasonCalendar.April)) * share * (1 + 0.02 * random.Normal());
        return (sets, repetitions, Math.Round(pounds / Step) * Step);
    }
}

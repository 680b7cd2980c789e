using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Demo.Testing;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Intervals of 1RMs estimated from sets, against what the athlete could have lifted that day.</summary>
/// <param name="name">Name of the kind of set.</param>
/// <param name="includes">Which sets.</param>
public sealed class EstimatedMaximumRates(string name, Func<OneRepMaxResult, LiftSet, bool> includes)
{
    private double _miss;

    public string Name { get; } = name;

    public Tally Covered { get; } = new();

    /// <summary>Estimate less the day's true maximum, % of it, mean over sets.</summary>
    public double BiasPercent => 100 * _miss / Covered.Asked;

    public static IReadOnlyList<EstimatedMaximumRates> Kinds() =>
    [
        new("back squat, 1 to 10 repetitions", (r, s) => s.Lift == "back_squat" && !r.IsDoubtful),
        new("bench press, 1 to 10 repetitions", (r, s) => s.Lift == "bench_press" && !r.IsDoubtful),
        new("bench press, more than 10 (marked doubtful)", (r, s) => s.Lift == "bench_press" && r.IsDoubtful),
    ];

    public void Add(SeasonChain chain)
    {
        for (var day = 0; day < chain.Days.Count; day++)
        {
            foreach (var athlete in chain.Days[day])
            {
                foreach (var set in athlete.Of<LiftSet>())
                {
                    var result = OneRepMax.Estimate(set);
                    if (result.Interval is not { } interval || !includes(result, set)) continue;
                    var form = DayForm.Of(chain.Truth.Seed, chain.Players[athlete.AthleteId], day, chain.Truth.Options.Links);
                    var truth = Maximum(form, set.Lift) * 0.45359237;
                    Covered.Add(chain.Number, interval.Contains(truth));
                    _miss += (result.Value.Kilograms - truth) / truth;
                }
            }
        }
    }

    private static double Maximum(Ability form, string lift) => lift == "back_squat" ? form.SquatPounds : form.BenchPounds;
}

using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Strength;

/// <summary>Chooses among the sets of one lift on one day the one that best supports a 1RM.</summary>
/// <remarks>
/// The highest number would reward the noisiest set, so the sets are ranked by the 1RM that each one supports:
/// a measured single by its load; an estimate by the lower end of its 95 % interval; a doubtful estimate by the bare load,
/// since the equation is not trusted there. A single is left out when the same or a heavier load went up for more repetitions:
/// it was not a maximum. Ties go to fewer repetitions.
/// </remarks>
public static class DayOneRepMax
{
    /// <summary>The best supported 1RM of these sets; null when there are none.</summary>
    /// <param name="sets">Sets of one lift by one athlete on one day, in any order.</param>
    /// <param name="formula">Equation for estimates; <see cref="OneRepMaxFormulas.DefaultFor"/> when null.</param>
    /// <exception cref="ArgumentException">The sets are of more than one lift.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A set is out of range; see <see cref="OneRepMax.Estimate"/>.</exception>
    public static OneRepMaxResult? From(IEnumerable<LiftSet> sets, OneRepMaxFormula? formula = null)
    {
        ArgumentNullException.ThrowIfNull(sets);
        var all = sets.ToList();
        if (all.Select(s => s.Lift).Distinct().Skip(1).Any())
            throw new ArgumentException($"Sets of one lift are needed; got {string.Join(", ", all.Select(s => s.Lift).Distinct())}.", nameof(sets));

        var results = all.ConvertAll(s => OneRepMax.Estimate(s, formula));
        return results
            .Where(r => !(r.IsMeasured && results.Any(o => !o.IsMeasured && o.Load >= r.Load)))
            .OrderByDescending(SupportedKilograms)
            .ThenBy(r => r.EffectiveRepetitions)
            .FirstOrDefault();
    }

    private static double SupportedKilograms(OneRepMaxResult result)
        => result.Interval is { } interval && !result.IsDoubtful ? interval.Low : result.Load.Kilograms;
}

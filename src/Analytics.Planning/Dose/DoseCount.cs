using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Dose;

/// <summary>Counts of one exercise with one scheme.</summary>
public static class DoseCount
{
    /// <summary>Repetitions in reserve up to which a set is hard whatever its per cent (common practice, no source).</summary>
    public const double HardReserve = 3;

    /// <summary>Ground contacts of all sets, both sides counted, the reactive movement of a contrast pair too.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="partner">The reactive movement of a contrast pair, if any.</param>
    public static int Contacts(Exercise exercise, SetScheme scheme, Exercise? partner = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        var own = scheme.TotalRepetitions * Sides(exercise) * exercise.JumpContacts;
        return own + (partner is null ? 0 : scheme.Sets * scheme.PartnerRepetitions * Sides(partner) * partner.JumpContacts);
    }

    /// <summary>1, or 2 where each side is done for itself.</summary>
    /// <param name="exercise">The exercise.</param>
    public static int Sides(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.IsUnilateral ? 2 : 1;
    }

    /// <summary>
    /// Parts of the guide by zone that an exercise takes, of <see cref="ZoneGuide.Whole"/>; 0 for what is no weightlifting movement or names no per cent. The guide counts by
    /// movement; movements that are nearly one (all cleans, snatches and pulls; all jerks and push presses) share one here (our choice, no source).
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static int ZoneParts(Exercise exercise, SetScheme scheme, RepetitionTable? table = null)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        return exercise is not { Pattern: MovementPattern.Weightlifting, Basis.Kind: LoadBasisKind.Lift } ? 0
            : SetPercents.Of(scheme, table ?? RepetitionTables.Textbook).Percent.Where(p => p > 0).Sum(p => ZoneGuide.At(p).PartsPerRepetition) * scheme.Repetitions * Sides(exercise);
    }

    /// <summary>
    /// Hard sets of a loaded lift: those at or above the rule's share of the 1RM, set by set, so that a ramp counts from where it gets there; all of them where at
    /// most <see cref="HardReserve"/> repetitions are left at the end, but of a ramp with per cent only the top set. Counted by pattern.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="heavyPercent">Share from which a set is heavy, %.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static int HardSets(Exercise exercise, SetScheme scheme, double heavyPercent, RepetitionTable? table = null)
    {
        ArgumentNullException.ThrowIfNull(scheme);
        var heavy = HeavySets(exercise, scheme, heavyPercent, table);
        if (exercise.Basis.Kind != LoadBasisKind.Lift || scheme.Reserve is not <= HardReserve) return heavy;
        return scheme.Kind == SchemeKind.Ramp && scheme.LeastPercent < scheme.MostPercent ? Math.Max(heavy, 1) : scheme.Sets;
    }

    /// <summary>Whether a working set reaches the rule's share of the 1RM of the exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme; one that names only repetitions in reserve is heavy where the table says so.</param>
    /// <param name="heavyPercent">Share from which a set is heavy, %.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; the textbook's when null.</param>
    public static bool IsHeavy(Exercise exercise, SetScheme scheme, double heavyPercent, RepetitionTable? table = null)
        => HeavySets(exercise, scheme, heavyPercent, table) > 0;

    private static int HeavySets(Exercise exercise, SetScheme scheme, double heavyPercent, RepetitionTable? table)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        return exercise.Basis.Kind != LoadBasisKind.Lift ? 0 : SetPercents.Of(scheme, table ?? RepetitionTables.Textbook).Percent.Count(p => p >= heavyPercent);
    }
}

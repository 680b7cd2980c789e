using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Dose;

/// <summary>Counts of one exercise with one scheme.</summary>
public static class DoseCount
{
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
    /// Hard sets: sets at or above the rule's share of the 1RM, or with at most 3 repetitions left in reserve, of a loaded lift. Counted by pattern.
    /// </summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="heavyPercent">Share from which a set is heavy, %.</param>
    public static int HardSets(Exercise exercise, SetScheme scheme, double heavyPercent)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        return exercise.Basis.Kind == LoadBasisKind.Lift && (scheme.MostPercent >= heavyPercent || scheme.Reserve <= 3) ? scheme.Sets : 0;
    }

    /// <summary>Whether a working set reaches the rule's share of the 1RM of the exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="scheme">The scheme.</param>
    /// <param name="heavyPercent">Share from which a set is heavy, %.</param>
    public static bool IsHeavy(Exercise exercise, SetScheme scheme, double heavyPercent)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(scheme);
        return exercise.Basis.Kind == LoadBasisKind.Lift && scheme.MostPercent >= heavyPercent;
    }
}

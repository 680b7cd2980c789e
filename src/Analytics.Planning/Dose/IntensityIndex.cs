namespace Analytics.Planning.Dose;

/// <summary>
/// Repetitions over what is left to the 1RM: repetitions / (100 − % of 1RM), set by set, then summed [hristov2005]. Sets of the same repetitions count more the
/// nearer they are to the maximum; at the maximum it is not defined.
/// </summary>
public static class IntensityIndex
{
    /// <summary>Index of one set; null at 100 % and more, where it is not defined.</summary>
    /// <param name="repetitions">Repetitions, 0 or more.</param>
    /// <param name="percent">% of 1RM.</param>
    public static double? OfSet(int repetitions, double percent) => percent < 100 ? repetitions / (100 - percent) : null;

    /// <summary>Sum over sets; null where one of them has none.</summary>
    /// <param name="repetitions">Repetitions of each set.</param>
    /// <param name="percents">% of 1RM, set by set.</param>
    public static double? Of(int repetitions, IReadOnlyList<double> percents)
    {
        ArgumentNullException.ThrowIfNull(percents);
        return percents.Aggregate((double?)0, (sum, percent) => sum + OfSet(repetitions, percent));
    }
}

using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>What one equation makes of a set.</summary>
/// <param name="Formula">The equation.</param>
/// <param name="OneRepMax">Its 1RM.</param>
/// <param name="InRange">Whether the repetitions lie in the equation's stated range.</param>
public sealed record FormulaValue(OneRepMaxFormula Formula, Mass OneRepMax, bool InRange);

/// <summary>How far the equations that apply to a set disagree.</summary>
public sealed record FormulaSpread
{
    private FormulaSpread(IReadOnlyList<FormulaValue> values) => Values = values;

    /// <summary>Every equation that applies, in the order of <see cref="OneRepMaxFormulas.All"/>; two or more.</summary>
    public IReadOnlyList<FormulaValue> Values { get; }

    /// <summary>The lowest 1RM among them.</summary>
    public Mass Lowest => Mass.FromKilograms(Values.Min(v => v.OneRepMax.Kilograms));

    /// <summary>The highest 1RM among them.</summary>
    public Mass Highest => Mass.FromKilograms(Values.Max(v => v.OneRepMax.Kilograms));

    /// <summary>Standard deviation between them, divisor n − 1.</summary>
    public Mass StandardDeviation
    {
        get
        {
            var mean = Values.Average(v => v.OneRepMax.Kilograms);
            return Mass.FromKilograms(Math.Sqrt(Values.Sum(v => Math.Pow(v.OneRepMax.Kilograms - mean, 2)) / (Values.Count - 1)));
        }
    }

    /// <summary>Runs every equation that applies; those outside their stated range take part and are marked.</summary>
    /// <param name="lift">Lift identifier.</param>
    /// <param name="load">Load lifted, above 0.</param>
    /// <param name="repetitions">Repetitions to failure, 1 or more; fractions allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException">Load or repetitions out of range.</exception>
    public static FormulaSpread Of(string lift, Mass load, double repetitions)
    {
        // Epley never breaks down: it speaks for the checks that all equations share.
        GeneralFormulas.Epley.Estimate(load, repetitions);
        return new([.. OneRepMaxFormulas.All
            .Where(f => f.AppliesTo(lift, load, repetitions))
            .Select(f => new FormulaValue(f, f.Estimate(load, repetitions), f.ValidRange.Contains(repetitions)))]);
    }
}

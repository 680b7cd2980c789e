using Analytics.Statistics;

namespace Analytics.Simulation.Clips.Study;

/// <summary>How one figure missed the truth over the repetitions of a case.</summary>
public sealed class MeasureTally
{
    private double sum, squares, errors;
    private int n, held, missing;

    /// <summary>Figures there were.</summary>
    public int Count => n;

    /// <summary>Repetitions without the figure.</summary>
    public int Missing => missing;

    /// <summary>Mean miss.</summary>
    public double Bias => sum / n;

    /// <summary>SD of the misses.</summary>
    public double Sd => Math.Sqrt((squares / n) - (Bias * Bias));

    /// <summary>Root mean square of the standard errors stated.</summary>
    public double StatedError => Math.Sqrt(errors / n);

    /// <summary>Share of 95 % intervals that hold the truth.</summary>
    public double Coverage => (double)held / n;

    /// <summary>Monte Carlo standard error of <see cref="Coverage"/> where it is 95 %.</summary>
    public double CoverageError => Math.Sqrt(0.95 * 0.05 / n);

    /// <summary>Mean miss over the error stated.</summary>
    public double BiasShare => Bias / StatedError;

    /// <summary>Monte Carlo standard error of <see cref="BiasShare"/>.</summary>
    public double BiasShareError => Sd / Math.Sqrt(n) / StatedError;

    public void Add(Estimate? estimate, double truth)
    {
        if (estimate is not { Interval: { } interval, StandardError: { } error })
        {
            missing++;
            return;
        }
        var miss = estimate.Value - truth;
        (sum, squares, errors, n) = (sum + miss, squares + (miss * miss), errors + (error * error), n + 1);
        if (interval.Contains(truth)) held++;
    }
}

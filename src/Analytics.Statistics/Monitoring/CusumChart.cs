using Analytics.Statistics.Results;

namespace Analytics.Statistics.Monitoring;

/// <summary>The two sums of a CUSUM chart after a value.</summary>
/// <param name="Index">Position in the series, from 0.</param>
/// <param name="Value">The value as measured.</param>
/// <param name="High">Sum of what went beyond target + k, never below 0.</param>
/// <param name="Low">Sum of what fell short of target − k, never below 0.</param>
/// <param name="Signals">Whether a sum exceeds h.</param>
public sealed record CusumPoint(int Index, double Value, double High, double Low, bool Signals);

/// <summary>
/// Two-sided cumulative sums: Sₜ = max(0, Sₜ₋₁ ± (xₜ − target) − k), a signal when one exceeds h [page1954]. Sees a lasting change of about
/// 2k soonest.
/// </summary>
public sealed record CusumChart : Result
{
    private CusumChart()
    {
    }

    /// <summary>Value the sums are taken about.</summary>
    public required double Target { get; init; }

    /// <summary>Allowance k, unit of the values: half the change to be seen.</summary>
    public required double Allowance { get; init; }

    /// <summary>Decision limit h, unit of the values.</summary>
    public required double Decision { get; init; }

    /// <summary>Standard deviation of single values; null when not given, and then no run length can be stated.</summary>
    public required double? StandardDeviation { get; init; }

    /// <summary>Mean points to the first false alarm with target and SD known.</summary>
    public FalseAlarms FalseAlarms => StandardDeviation is { } sd
        ? new(null, CusumRunLength.TwoSided(Allowance / sd, Decision / sd), "target and SD taken as known")
        : new(null, null, "no SD given, so no rate can be stated");

    /// <summary>A chart with k and h in the unit of the values.</summary>
    /// <param name="target">Finite.</param>
    /// <param name="allowance">k, 0 or more.</param>
    /// <param name="decision">h, above 0.</param>
    /// <param name="standardDeviation">Of single values, above 0; null when not known.</param>
    public static CusumChart Of(double target, double allowance, double decision, double? standardDeviation = null) => new()
    {
        Target = Require.Finite(target, nameof(target)),
        Allowance = Require.NotNegative(allowance, nameof(allowance)),
        Decision = Require.Positive(decision, nameof(decision)),
        StandardDeviation = standardDeviation is { } sd ? Known(sd, decision) : null,
    };

    /// <summary>A chart with k and h in standard deviations.</summary>
    /// <param name="target">Finite.</param>
    /// <param name="standardDeviation">Of single values, above 0.</param>
    /// <param name="k">Allowance in standard deviations, 0 or more.</param>
    /// <param name="h">Decision limit in standard deviations, above 0.</param>
    public static CusumChart Standardised(double target, double standardDeviation, double k = 0.5, double h = 5)
        => Of(target, k * Require.Positive(standardDeviation, nameof(standardDeviation)), h * standardDeviation, standardDeviation);

    /// <summary>Runs values through the chart; the sums go on after a signal.</summary>
    /// <param name="values">Finite values in the order of time.</param>
    public IReadOnlyList<CusumPoint> Points(IReadOnlyList<double> values)
    {
        Require.Sample(values, 1, nameof(values));
        var points = new CusumPoint[values.Count];
        double high = 0, low = 0;
        for (var i = 0; i < points.Length; i++)
        {
            high = Math.Max(0, high + values[i] - Target - Allowance);
            low = Math.Max(0, low + Target - values[i] - Allowance);
            points[i] = new(i, values[i], high, low, high > Decision || low > Decision);
        }

        return points;
    }

    // Checked here, so that no print fails later.
    private static double Known(double sd, double decision)
    {
        CusumRunLength.Decision(decision / Require.Positive(sd, nameof(sd)));
        return sd;
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("CUSUM chart", "two-sided cumulative sums [page1954]",
    [
        new("target", Target),
        new("allowance k", Allowance),
        new("decision limit h", Decision),
        new("mean points to a false alarm", FalseAlarms.RunLength),
        new("mean points to see a lasting change of 1 SD", StandardDeviation is { } sd ? CusumRunLength.TwoSided(Allowance / sd, Decision / sd, 1) : null),
    ])
    {
        Basis = "target, k and h as given",
        Remarks = [FalseAlarms.InWords(), "A target or SD from few baseline points makes false alarms more frequent than this."],
    };
}

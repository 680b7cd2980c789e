using System.Globalization;

namespace Analytics.Metrics.Motion;

/// <summary>The samples of one digitised point: a gap is NaN in both coordinates, inside only.</summary>
internal static class TrackSamples
{
    /// <summary>Checked copies of both coordinates.</summary>
    public static (double[] X, double[] Y) Checked(string name, ReadOnlySpan<double> x, ReadOnlySpan<double> y, string unit)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        if (x.Length != y.Length)
            throw new ArgumentException($"Marker '{name}' has {x.Length} x and {y.Length} y values; both must have one value a frame.", nameof(y));
        if (x.Length == 0) throw new ArgumentException($"Marker '{name}' has no samples; give at least one frame.", nameof(x));
        for (var i = 0; i < x.Length; i++)
        {
            if (double.IsNaN(x[i]) && double.IsNaN(y[i])) continue;
            if (!double.IsFinite(x[i]) || !double.IsFinite(y[i]))
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture,
                    $"Marker '{name}', sample {i}: ({x[i]}, {y[i]}) {unit}; both coordinates must be finite, or both blank for a frame that was not digitised."), nameof(x));
        }
        return (x.ToArray(), y.ToArray());
    }
}

using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Speed and acceleration by central differences: v[i] = (x[i+1] − x[i−1])/(2Δt), a[i] = (x[i+1] − 2x[i] + x[i−1])/Δt². The first and the last sample have none; nothing is
/// invented there. Unfiltered error of SD s gives s/(√2·Δt) and √6·s/Δt²; after a filter see <see cref="NoiseGain"/>.
/// </summary>
public static class CentralDifferences
{
    /// <summary>First derivative at samples 1 to n − 2, by second; allocates nothing.</summary>
    /// <param name="x">n samples, 3 or more.</param>
    /// <param name="interval">Δt, above 0.</param>
    /// <param name="inner">n − 2 results; the first belongs to sample 1.</param>
    /// <exception cref="ArgumentException">Too few samples or a span of another length.</exception>
    public static void Velocity(ReadOnlySpan<double> x, Duration interval, Span<double> inner)
    {
        var factor = 0.5 / Checked(x, interval, inner);
        ReadOnlySpan<double> before = x[..inner.Length], after = x[2..];
        for (var i = 0; i < inner.Length; i++) inner[i] = (after[i] - before[i]) * factor;
    }

    /// <summary>Second derivative at samples 1 to n − 2, by second squared; allocates nothing.</summary>
    /// <param name="x">n samples, 3 or more.</param>
    /// <param name="interval">Δt, above 0.</param>
    /// <param name="inner">n − 2 results; the first belongs to sample 1.</param>
    /// <exception cref="ArgumentException">Too few samples or a span of another length.</exception>
    public static void Acceleration(ReadOnlySpan<double> x, Duration interval, Span<double> inner)
    {
        var step = Checked(x, interval, inner);
        var factor = 1 / (step * step);
        ReadOnlySpan<double> before = x[..inner.Length], at = x[1..^1], after = x[2..];
        for (var i = 0; i < inner.Length; i++) inner[i] = (after[i] - (2 * at[i]) + before[i]) * factor;
    }

    /// <summary>First derivative by sample, by second; NaN at the ends of every piece and in gaps.</summary>
    internal static double[] VelocityByPiece(ReadOnlySpan<double> x, IReadOnlyList<TrackPiece> pieces, Duration step) => ByPiece(x, pieces, step, Velocity);

    /// <summary>Second derivative by sample, by second squared; NaN at the ends of every piece and in gaps.</summary>
    internal static double[] AccelerationByPiece(ReadOnlySpan<double> x, IReadOnlyList<TrackPiece> pieces, Duration step) => ByPiece(x, pieces, step, Acceleration);

    private delegate void Difference(ReadOnlySpan<double> x, Duration interval, Span<double> inner);

    private static double[] ByPiece(ReadOnlySpan<double> x, IReadOnlyList<TrackPiece> pieces, Duration step, Difference difference)
    {
        var result = new double[x.Length];
        if (pieces is not [{ } whole] || whole.Length != x.Length || whole.Length < 3) Array.Fill(result, double.NaN);
        else (result[0], result[^1]) = (double.NaN, double.NaN);
        foreach (var piece in pieces)
            if (piece.Length > 2) difference(x.Slice(piece.Start, piece.Length), step, result.AsSpan(piece.Start + 1, piece.Length - 2));
        return result;
    }

    private static double Checked(ReadOnlySpan<double> x, Duration interval, ReadOnlySpan<double> inner)
    {
        if (x.Length < 3) throw new ArgumentException($"{x.Length} samples have no central difference; give 3 or more.", nameof(x));
        if (inner.Length != x.Length - 2) throw new ArgumentException($"{x.Length} samples have {x.Length - 2} central differences; got room for {inner.Length}.", nameof(inner));
        return Require.Positive(interval, "time between frames").Seconds;
    }
}

using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>
/// Finds jumps by the second difference x[i+1] − 2x[i] + x[i−1] of a marker, held against its own typical size (1.4826 times the median of its absolute values, which jumps hardly move).
/// The factor of 10 is our choice: with error alone it is passed less than once in 10¹⁵, and the movement of limbs stays inside it at 60 Hz and more.
/// </summary>
/// <param name="Factor">Typical sizes that make a jump, above 3.</param>
public sealed record JumpFinder(double Factor = 10)
{
    /// <summary>Below this no digitised point is exact (m); keeps a made-up perfect track from having jumps of rounding error.</summary>
    private const double Finest = 1e-6;

    /// <summary>All jumps of a clip, by marker and frame. Where frames were dropped or stretched, differences are taken by time, so that a longer step is no jump.</summary>
    public IReadOnlyList<MarkerJump> Find(DigitisedClip clip)
    {
        ArgumentNullException.ThrowIfNull(clip);
        double[]? steps = clip.Clock.IsVariable ? Steps(clip) : null;
        return [.. clip.Tracks.SelectMany(t => Find(t, clip.FirstFrame, steps))];
    }

    /// <summary>The jumps of one marker.</summary>
    /// <param name="track">The marker.</param>
    /// <param name="firstFrame">Frame number of its first sample.</param>
    /// <exception cref="InvalidOperationException">A factor of 3 or less.</exception>
    public IReadOnlyList<MarkerJump> Find(MarkerTrack track, int firstFrame) => Find(track, firstFrame, null);

    private List<MarkerJump> Find(MarkerTrack track, int firstFrame, double[]? steps)
    {
        ArgumentNullException.ThrowIfNull(track);
        if (!(Factor > 3)) throw new InvalidOperationException(string.Create(CultureInfo.InvariantCulture, $"The factor of a jump finder must be above 3; got {Factor}."));
        double[] x = SecondDifferences(track.X, steps), y = SecondDifferences(track.Y, steps);
        double limitX = Factor * Typical(x), limitY = Factor * Typical(y);

        var jumps = new List<MarkerJump>();
        for (var i = 0; i < x.Length; i++)
        {
            if (!Beyond(i)) continue;
            // A run of samples beyond the limit is one event; three or more of them peak at a spike, two equal ones are the two sides of a step.
            var start = i;
            while (i + 1 < x.Length && Beyond(i + 1)) i++;
            var peak = Enumerable.Range(start, i - start + 1).MaxBy(Size);
            var (before, after) = (peak > 0 ? Size(peak - 1) : 0, peak + 1 < x.Length ? Size(peak + 1) : 0);
            // A spike of size s shows as s, -2s, s, a step as s, -s: beside the peak stands half of it, or all of it on one side.
            var step = Math.Max(before, after) > 0.75 * Size(peak);
            var at = step && after > before ? peak + 1 : peak;
            jumps.Add(new(track.Name, track.Role, firstFrame + at, step ? JumpKind.Step : JumpKind.Spike, Length.FromMetres(step ? Size(peak) : Size(peak) / 2)));
        }
        return jumps;

        bool Beyond(int i) => Math.Abs(x[i]) > limitX || Math.Abs(y[i]) > limitY;
        double Size(int i) => double.IsNaN(x[i]) ? 0 : double.Hypot(x[i], y[i]);
    }

    // NaN where a neighbour is missing, which no comparison passes.
    private static double[] SecondDifferences(ReadOnlySpan<double> values, double[]? steps)
    {
        var differences = new double[values.Length];
        Array.Fill(differences, double.NaN);
        for (var i = 1; i + 1 < values.Length; i++)
        {
            var (before, after) = steps is null ? (1, 1) : (steps[i], steps[i + 1]);
            differences[i] = 2 * (((values[i + 1] - values[i]) / after) - ((values[i] - values[i - 1]) / before)) / (before + after);
        }
        return differences;
    }

    // Time since the frame before, in typical intervals.
    private static double[] Steps(DigitisedClip clip)
        => [.. Enumerable.Range(0, clip.Count).Select(i => i == 0 ? 1 : clip.Clock.Between(clip.FirstFrame + i - 1, clip.FirstFrame + i) / clip.Clock.Interval)];

    private static double Typical(double[] differences)
    {
        double[] sizes = [.. differences.Where(d => !double.IsNaN(d)).Select(Math.Abs).Order()];
        return Math.Max(Finest, sizes.Length == 0 ? 0 : 1.4826 * sizes[sizes.Length / 2]);
    }
}

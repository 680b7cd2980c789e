using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Summaries;

/// <summary>Huber's M estimate of the centre: the mean after values far out are pulled in to centre ± k spreads, again and again until it stands still [huber1981].</summary>
/// <param name="Centre">Centre with its approximate error: √(Σψ²/(n − 1))/(share not pulled in × √n), Student's t with n − 1 df.</param>
/// <param name="Spread">Robust spread used, in the unit of the values; held fixed.</param>
/// <param name="Tuning">k; 1.5 keeps 96 % of the precision of the mean for normal values.</param>
/// <param name="PulledIn">Values beyond k spreads. They are pulled in for this figure only, never removed.</param>
public sealed record HuberMean(Estimate Centre, double Spread, double Tuning, int PulledIn) : Result
{
    /// <summary>Estimates the centre.</summary>
    /// <param name="values">At least two finite values, not all equal.</param>
    /// <param name="tuning">k, above 0, in spreads.</param>
    /// <param name="spread">Spread to use, above 0; left out, the scaled absolute deviation of <see cref="RobustSummary"/>.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">All values are equal, so there is no spread to judge "far" by.</exception>
    public static HuberMean Of(IReadOnlyList<double> values, double tuning = 1.5, double? spread = null, double level = 0.95)
    {
        Require.Sample(values, 2, nameof(values));
        Require.Positive(tuning, nameof(tuning));
        Require.Share(level, nameof(level));
        var robust = RobustSummary.Of(values);
        var s = spread is { } given
            ? Require.Positive(given, nameof(spread))
            : robust.Spread ?? throw new ArgumentException($"All {values.Count} values are equal; a robust mean needs some spread.", nameof(values));
        var reach = tuning * s;
        var centre = robust.Median;
        // Each step shrinks the distance by the share pulled in, which stays below one half from the median on.
        for (var step = 0; step < 1000; step++)
        {
            var next = Moments.Mean([.. values.Select(v => Math.Clamp(v, centre - reach, centre + reach))]);
            var move = Math.Abs(next - centre);
            centre = next;
            if (move <= 1e-14 * s) break;
        }

        var n = values.Count;
        var pulled = values.Count(v => Math.Abs(v - centre) > reach);
        return new(CentreOf(values, centre, reach, pulled, level, n), s, tuning, pulled);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Robust mean", FormattableString.Invariant($"Huber's M estimate, k = {Tuning} [huber1981]"),
        [
            new("centre", Centre.Value) { StandardError = Centre.StandardError, Interval = Centre.Interval, DegreesOfFreedom = Centre.N - 1 },
            new("spread used", Spread),
            new("values pulled in", PulledIn) { Note = PulledIn > 0 ? "kept in the data" : string.Empty },
        ])
    { Basis = $"{Centre.N} values" };

    private static Estimate CentreOf(IReadOnlyList<double> values, double centre, double reach, int pulled, double level, int n)
    {
        const string method = "Huber's M estimate, approximate error";
        if (pulled >= n) return new(centre, null, null, n, method + " not known: every value is pulled in");
        var squares = values.Sum(v => Math.Pow(Math.Clamp(v - centre, -reach, reach), 2));
        var error = Math.Sqrt(squares / (n - 1)) / (1 - (double)pulled / n) / Math.Sqrt(n);
        var half = StudentLaw.TwoSided(level, n - 1) * error;
        return new(centre, error, new(centre - half, centre + half, level), n, method);
    }
}

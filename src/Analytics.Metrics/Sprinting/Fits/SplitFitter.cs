using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Fitting;

namespace Analytics.Metrics.Sprinting.Fits;

/// <summary>Fits the mono-exponential curve to the splits of one run. Sources: [samozino2016], [more1978].</summary>
public static class SplitFitter
{
    // Far outside anything a person runs (top speeds to 12.5 m/s, time constants 0.6 to 1.6 s): a fit that goes there has found no run.
    private const double TopSpeedLow = 0.5, TopSpeedLimit = 15; // m/s
    private const double TimeConstantLow = 0.1, TimeConstantLimit = 5; // s
    private const double StartTermLimit = 5; // s

    private static readonly FitOptions[] Options = [.. Enum.GetValues<StartModel>().Select(BoundsOf)];

    /// <summary>Fits one run.</summary>
    /// <param name="splits">Gates by rising distance; read, never changed. The start line is not a gate.</param>
    /// <param name="start">What to assume about the start.</param>
    /// <param name="response">Which number carries the error.</param>
    /// <returns>A complete result, also when nothing could be fitted.</returns>
    public static SplitFit Fit(IReadOnlyList<Split> splits, StartModel start = StartModel.Still, SplitResponse response = SplitResponse.Time)
    {
        ArgumentNullException.ThrowIfNull(splits);
        var needed = start.GatesNeeded();
        if (splits.Count < needed)
            return Without(SplitFitState.TooFewGates, Say($"{splits.Count} {(splits.Count == 1 ? "gate" : "gates")}: the {start.InWords()} model needs {needed}"));
        if (Fault(splits) is { } fault) return Without(SplitFitState.BadSplits, fault);

        Span<double> distances = splits.Count <= 32 ? stackalloc double[splits.Count] : new double[splits.Count];
        Span<double> times = splits.Count <= 32 ? stackalloc double[splits.Count] : new double[splits.Count];
        for (var i = 0; i < splits.Count; i++) (distances[i], times[i]) = (splits[i].Distance.Metres, splits[i].Time.Seconds);

        Span<double> guess = stackalloc double[4];
        guess = guess[..Guess(distances, times, start, guess)];
        var options = Options[(int)start];
        var numerics = response == SplitResponse.Time
            ? LevenbergMarquardt.Fit(new SplitTimeModel(start), distances, times, guess, options)
            : LevenbergMarquardt.Fit(new SplitDistanceModel(start), times, distances, guess, options);

        if (numerics is { IsSolution: true, UnscaledCovariance: { } unscaled })
            return Without(SplitFitState.Fitted, numerics.Ending.InWords()) with
            {
                Numerics = numerics,
                Curve = new(start, response, numerics.Parameters, unscaled, numerics.N, numerics.ResidualSd, numerics.DegreesOfFreedom, null),
            };
        return numerics.Ending == FitEnding.OnBound && start.HasRunIn() && numerics.Parameters[^1] == 0
            ? Without(SplitFitState.NoRunInSeen, "the unseen run-in came out as 0 m: a fit without it says the same") with { Numerics = numerics }
            : Without(SplitFitState.NoCurve, Say($"the splits do not look like a run towards a top speed ({numerics.Ending.InWords()})")) with { Numerics = numerics };

        SplitFit Without(SplitFitState state, string explanation)
            => new() { Start = start, Response = response, Splits = splits, State = state, Explanation = explanation };
    }

    // Far from the start t ≈ x/V + T (less what an unseen run-in gives), with V a little above the mean speed of the last interval.
    private static int Guess(ReadOnlySpan<double> distances, ReadOnlySpan<double> times, StartModel start, Span<double> guess)
    {
        var speed = Math.Clamp(1.03 * (distances[^1] - distances[^2]) / (times[^1] - times[^2]), 1, TopSpeedLimit - 3);
        guess[0] = speed;
        guess[1] = Math.Clamp(times[^1] - (distances[^1] / speed), 0.3, 2);
        var count = 2;
        if (start.HasOffset()) guess[count++] = 0;
        if (start.HasRunIn())
        {
            guess[1] += 0.2;
            guess[count++] = 0.25;
        }
        return count;
    }

    private static string? Fault(IReadOnlyList<Split> splits)
    {
        var (distance, time) = (0.0, 0.0);
        for (var i = 0; i < splits.Count; i++)
        {
            if (!(splits[i].Distance.Metres > distance))
                return Say($"gate {i + 1} stands at {splits[i].Distance}, not beyond {distance:0.######} m: distances must rise from above 0 m");
            if (!(splits[i].Time.Seconds > time))
                return Say($"gate {i + 1} at {splits[i].Distance} reads {splits[i].Time}, not after {time:0.######} s: times must rise from above 0 s");
            (distance, time) = (splits[i].Distance.Metres, splits[i].Time.Seconds);
        }
        return null;
    }

    private static FitOptions BoundsOf(StartModel start)
    {
        List<double> lower = [TopSpeedLow, TimeConstantLow], upper = [TopSpeedLimit, TimeConstantLimit];
        if (start.HasOffset())
        {
            lower.Add(-StartTermLimit);
            upper.Add(StartTermLimit);
        }
        if (start.HasRunIn())
        {
            lower.Add(0);
            upper.Add(StartTermLimit);
        }
        // The start values are near, so the first steps need little damping; a last step of 1e-8 leaves an error far below any gate's.
        return new() { Lower = lower, Upper = upper, StartDamping = 1e-4, StepTolerance = 1e-8, MaxIterations = 300 };
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

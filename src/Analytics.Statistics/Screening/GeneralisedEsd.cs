using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Screening;

/// <summary>One step of the test: the value farthest out of those left.</summary>
/// <param name="Suspect">The value; its statistic is R, its distance from the mean of those left in their SDs.</param>
/// <param name="Critical">Bound λ for this step.</param>
public sealed record EsdStep(ScreenedValue Suspect, double Critical);

/// <summary>Rosner's test for up to k outliers on either side, where one may hide another [rosner1983].</summary>
/// <param name="Steps">Steps in order; fewer than asked for when the values left are all equal.</param>
/// <param name="Outliers">Suspects up to the last step that passes its bound. They are named, not removed.</param>
/// <param name="Alpha">Rate of false alarms.</param>
/// <param name="N">Number of values.</param>
public sealed record GeneralisedEsd(IReadOnlyList<EsdStep> Steps, IReadOnlyList<ScreenedValue> Outliers, double Alpha, int N) : Result
{
    /// <summary>Fewest values for which Rosner found the stated rate of false alarms to hold.</summary>
    public const int TrustedFrom = 25;

    /// <summary>Tests a sample.</summary>
    /// <param name="values">Finite values, normal but for the outliers; at least two more than <paramref name="atMost"/>, not all equal.</param>
    /// <param name="atMost">Most outliers looked for, at least 1; decided before looking.</param>
    /// <param name="alpha">Rate of false alarms, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Too few values, or all equal.</exception>
    public static GeneralisedEsd Of(IReadOnlyList<double> values, int atMost, double alpha = 0.05)
    {
        Require.AtLeast(atMost, 1, nameof(atMost));
        Require.Share(alpha, nameof(alpha));
        Require.Sample(values, atMost + 2, nameof(values));
        if (values.All(v => v == values[0])) throw new ArgumentException($"All {values.Count} values are equal; the test needs some spread.", nameof(values));
        var left = values.Select((v, i) => (Value: v, Index: i)).ToList();
        List<EsdStep> steps = [];
        for (var i = 1; i <= atMost; i++)
        {
            double[] kept = [.. left.Select(v => v.Value)];
            double mean = Moments.Mean(kept), sd = Moments.StandardDeviation(kept);
            if (sd <= 0) break;
            var farthest = left.MaxBy(v => Math.Abs(v.Value - mean));
            steps.Add(new(new(farthest.Index, farthest.Value, Math.Abs(farthest.Value - mean) / sd), CriticalOf(values.Count, i, alpha)));
            left.Remove(farthest);
        }

        var last = steps.FindLastIndex(s => s.Suspect.Statistic > s.Critical);
        return new(steps, [.. steps.Take(last + 1).Select(s => s.Suspect)], alpha, values.Count);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Are some values outliers?", FormattableString.Invariant($"generalised extreme studentised deviate, {100 * Alpha:0.##} % false alarms [rosner1983]"),
        [
            new("outliers named", Outliers.Count),
            .. Steps.Select((s, i) => new ResultLine($"value {s.Suspect.Index + 1}", s.Suspect.Value)
            {
                Note = FormattableString.Invariant($"R {s.Suspect.Statistic:0.000}, bound {s.Critical:0.000}{(i < Outliers.Count ? ", outlier" : "")}"),
            }),
        ])
    {
        Basis = $"{N} values, at most {Steps.Count} outliers looked for",
        Remarks = N < TrustedFrom
            ? ["Named values stay in the data.", $"Below {TrustedFrom} values the rate of false alarms is only approximate."]
            : ["Named values stay in the data."],
    };

    private static double CriticalOf(int n, int step, double alpha)
    {
        var left = n - step + 1;
        var t = StudentLaw.Quantile(1 - alpha / (2 * left), left - 2);
        return (left - 1) * t / Math.Sqrt((left - 2 + t * t) * left);
    }
}

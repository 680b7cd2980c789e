using Analytics.Statistics.Distributions;
using Analytics.Statistics.Reliability;
using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Agreement;

/// <summary>Agreement of single readings of two methods when each was taken several times: means are compared, and the error that averaging took away is put back [blandaltman1986].</summary>
/// <param name="Bias">Mean difference of the athletes' means, first minus second, with Student's t interval.</param>
/// <param name="SpreadOfMeans">SD of the differences of means: too small for single readings.</param>
/// <param name="CorrectedSpread">√(SD² + (1 − 1/m₁) s₁² + (1 − 1/m₂) s₂²), the SD of differences of single readings.</param>
/// <param name="Lower">Lower limit for single readings, with an approximate error.</param>
/// <param name="Upper">Upper limit for single readings.</param>
/// <param name="LeftOut">Athletes not used because a reading is missing.</param>
public sealed record ReplicateAgreement(Estimate Bias, double SpreadOfMeans, double CorrectedSpread, Estimate Lower, Estimate Upper, int LeftOut) : Result
{
    /// <summary>Degrees of freedom of the corrected spread, after Satterthwaite.</summary>
    public required double DegreesOfFreedom { get; init; }

    /// <summary>Compares two methods, first minus second.</summary>
    /// <param name="first">Athletes × replicates of the first method.</param>
    /// <param name="second">The same athletes in the same order; may have another number of replicates.</param>
    /// <param name="multiplier">SDs on either side of the bias; 1.96 holds 95 %.</param>
    /// <param name="shiftIsError">Whether a shift all athletes share from replicate to replicate counts as error; it does in the source.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Different athletes, or fewer than 2 with every replicate of both.</exception>
    public static ReplicateAgreement Of(TrialTable first, TrialTable second, double multiplier = 1.96, bool shiftIsError = true, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Require.Positive(multiplier, nameof(multiplier));
        if (first.Athletes != second.Athletes)
            throw new ArgumentException($"{first.Athletes} athletes in the first table but {second.Athletes} in the second; both need the same ones in the same order.", nameof(second));
        var used = Enumerable.Range(0, first.Athletes).Where(i => Complete(first, i) && Complete(second, i)).ToArray();
        if (used.Length < 2) throw new ArgumentException($"{used.Length} of {first.Athletes} athletes have every replicate of both methods; at least 2 are needed.", nameof(first));

        double[][] a = [.. used.Select(i => Row(first, i))], b = [.. used.Select(i => Row(second, i))];
        double[] differences = [.. a.Zip(b, (x, y) => x.Average() - y.Average())];
        var bias = MeanEstimate.Of(differences, level);
        var variance = Moments.Variance(differences);
        (double Part, double Df)[] parts = [(variance, used.Length - 1), Within(a, shiftIsError), Within(b, shiftIsError)];
        var total = parts.Sum(p => p.Part);
        if (total <= 0) throw new ArgumentException("The methods differ by the same amount in every athlete and repeat exactly; limits need some spread.", nameof(first));
        var df = total * total / parts.Sum(p => p.Part * p.Part / p.Df);
        var corrected = Math.Sqrt(total);
        var error = Math.Sqrt(variance / used.Length + multiplier * multiplier * total / (2 * df));
        return new(bias, Math.Sqrt(variance), corrected, Limit(-1), Limit(1), first.Athletes - used.Length) { DegreesOfFreedom = df };

        Estimate Limit(int sign)
        {
            var value = bias.Value + sign * multiplier * corrected;
            var reach = StudentLaw.TwoSided(level, df) * error;
            return new(value, error, new(value - reach, value + reach, level), used.Length, "limit of agreement of single readings, approximate error");
        }
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Limits of agreement from replicates", "differences of means, error of single readings put back [blandaltman1986]",
        [
            new("upper limit", Upper.Value) { StandardError = Upper.StandardError, Interval = Upper.Interval },
            new("bias", Bias.Value) { StandardError = Bias.StandardError, Interval = Bias.Interval, DegreesOfFreedom = Bias.N - 1 },
            new("lower limit", Lower.Value) { StandardError = Lower.StandardError, Interval = Lower.Interval },
            new("SD of differences of means", SpreadOfMeans) { DegreesOfFreedom = Bias.N - 1 },
            new("SD of differences of single readings", CorrectedSpread) { DegreesOfFreedom = DegreesOfFreedom },
        ])
    { Basis = $"{Bias.N} athletes" + (LeftOut > 0 ? $"; {LeftOut} left out for a missing replicate" : string.Empty) };

    private static bool Complete(TrialTable table, int athlete) => Enumerable.Range(0, table.Trials).All(j => table[athlete, j].HasValue);

    private static double[] Row(TrialTable table, int athlete) => [.. Enumerable.Range(0, table.Trials).Select(j => table[athlete, j]!.Value)];

    private static (double Part, double Df) Within(double[][] rows, bool shiftIsError)
    {
        var error = shiftIsError
            ? TypicalErrors.FromAttempts(rows)
            : TypicalErrors.FromTrials(TrialTable.FromRows([.. rows.Select(r => (IReadOnlyList<double?>)[.. r.Select(v => (double?)v)])]));
        return ((1 - 1.0 / rows[0].Length) * error.Value * error.Value, error.DegreesOfFreedom);
    }
}

using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Reliability;

/// <summary>
/// The six intraclass correlations. Two naming schemes are in use; both are given. They differ in what counts as error
/// and in whether one trial or the mean of k is to be used later.
/// </summary>
public enum IccForm
{
    /// <summary>One-way random, single measure: ICC(1,1) [shroutfleiss1979], ICC(1) [mcgrawwong1996].</summary>
    OneWaySingle,

    /// <summary>Absolute agreement, single measure: ICC(2,1) [shroutfleiss1979], ICC(A,1) [mcgrawwong1996].</summary>
    AgreementSingle,

    /// <summary>Consistency, single measure: ICC(3,1) [shroutfleiss1979], ICC(C,1) [mcgrawwong1996].</summary>
    ConsistencySingle,

    /// <summary>One-way random, mean of k: ICC(1,k), ICC(k).</summary>
    OneWayMean,

    /// <summary>Absolute agreement, mean of k: ICC(2,k), ICC(A,k).</summary>
    AgreementMean,

    /// <summary>Consistency, mean of k: ICC(3,k), ICC(C,k).</summary>
    ConsistencyMean,
}

/// <summary>An intraclass correlation: the share of the variance between test scores that is between athletes.</summary>
/// <remarks>
/// It depends on who was tested as much as on the test: a mixed squad gives a high figure with the same typical error.
/// Compare tests by typical error. The agreement interval is approximate, the others exact for normal errors.
/// </remarks>
/// <param name="Form">Which of the six.</param>
/// <param name="Value">The estimate, at most 1; may be negative.</param>
/// <param name="Interval">Interval by the F law.</param>
/// <param name="Athletes">Athletes used.</param>
/// <param name="Trials">Trials of each.</param>
/// <param name="LeftOut">Athletes not used because a trial is missing.</param>
public sealed record IntraclassCorrelation(IccForm Form, double Value, Interval Interval, int Athletes, int Trials, int LeftOut)
{
    /// <summary>Computes one form. Athletes with a missing trial cannot be used here; <see cref="LeftOut"/> counts them.</summary>
    /// <param name="table">Athletes × trials with at least 2 complete rows that are not all equal.</param>
    /// <param name="form">Which of the six.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes have every trial, or the table does not vary.</exception>
    public static IntraclassCorrelation Of(TrialTable table, IccForm form = IccForm.ConsistencySingle, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        Require.Share(level, nameof(level));
        var complete = table.CompleteRows();
        if (complete is null || complete.Athletes < 2)
            throw new ArgumentException($"{complete?.Athletes ?? 0} of {table.Athletes} athletes have every trial; at least 2 are needed.", nameof(table));

        var ms = MeanSquares.Of(complete);
        if (ms.BetweenAthletes + ms.WithinAthletes <= 0)
            throw new ArgumentException($"All {complete.Observations} values are equal; a correlation needs some spread.", nameof(table));

        var (single, interval) = form switch
        {
            IccForm.OneWaySingle or IccForm.OneWayMean => Ratio(ms.BetweenAthletes, ms.WithinAthletes, ms.Athletes * (ms.Trials - 1), ms, level),
            IccForm.ConsistencySingle or IccForm.ConsistencyMean => Ratio(ms.BetweenAthletes, ms.Residual, (ms.Athletes - 1) * (ms.Trials - 1), ms, level),
            IccForm.AgreementSingle or IccForm.AgreementMean => AgreementIcc.Of(ms, level),
            _ => throw new ArgumentOutOfRangeException(nameof(form), form, "Unknown form."),
        };
        if (form is IccForm.OneWayMean or IccForm.AgreementMean or IccForm.ConsistencyMean)
        {
            single = OfMean(single, ms.Trials);
            interval = new(OfMean(interval.Low, ms.Trials), OfMean(interval.High, ms.Trials), level);
        }

        return new(form, single, interval, ms.Athletes, ms.Trials, table.Athletes - ms.Athletes);
    }

    /// <summary>Reliability of the mean of k trials from that of one (Spearman–Brown): k r / (1 + (k − 1) r).</summary>
    /// <param name="single">Reliability of one trial, at most 1.</param>
    /// <param name="trials">Number of trials, above 0.</param>
    public static double OfMean(double single, double trials)
        => Require.Positive(trials, nameof(trials)) * single / (1 + (trials - 1) * single);

    /// <summary>Standard error of measurement SD √(1 − ICC).</summary>
    /// <remarks>
    /// With the SD of all values of a table this is not √(residual mean square): it lies below it. Use <see cref="TypicalErrors"/>
    /// where trials are at hand; this is for reports that give only an SD and a correlation.
    /// </remarks>
    /// <param name="standardDeviation">SD of the athletes' scores, above 0.</param>
    /// <param name="reliability">Reliability, 0 to 1.</param>
    public static double StandardErrorOfMeasurement(double standardDeviation, double reliability)
    {
        Require.Positive(standardDeviation, nameof(standardDeviation));
        if (!(reliability >= 0 && reliability <= 1))
            throw new ArgumentOutOfRangeException(nameof(reliability), reliability, FormattableString.Invariant($"reliability is {reliability}; allowed: 0 to 1."));
        return standardDeviation * Math.Sqrt(1 - reliability);
    }

    private static (double Single, Interval Interval) Ratio(double between, double error, int df, MeanSquares ms, double level)
    {
        int rows = ms.Athletes - 1, k = ms.Trials;
        var value = (between - error) / (between + (k - 1) * error);
        // Trials that repeat exactly leave no error: the ratio is infinite and both limits are 1.
        if (error <= 0) return (value, new(1, 1, level));
        var low = between / error / FisherLaw.Quantile((1 + level) / 2, rows, df);
        var high = between / error * FisherLaw.Quantile((1 + level) / 2, df, rows);
        return (value, new((low - 1) / (low + k - 1), (high - 1) / (high + k - 1), level));
    }
}

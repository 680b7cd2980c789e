using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

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
public sealed record IntraclassCorrelation(IccForm Form, double Value, Interval Interval, int Athletes, int Trials, int LeftOut) : Result
{
    /// <summary>Variance ratio that tests for no difference between athletes; infinite when trials repeat exactly.</summary>
    public double F { get; private init; }

    /// <summary>Degrees of freedom of the numerator of <see cref="F"/>: athletes less 1.</summary>
    public int DfBetween { get; private init; }

    /// <summary>Degrees of freedom of the denominator of <see cref="F"/>.</summary>
    public int DfError { get; private init; }

    /// <summary>Degrees of freedom of error behind the interval: those of <see cref="F"/>, but Satterthwaite's for the agreement forms.</summary>
    public double IntervalDf { get; private init; }

    /// <summary>Probability of an F at least as large when athletes do not differ; exact for normal errors.</summary>
    public double P { get; private init; }

    /// <summary>Whether athletes were found to differ beyond error at all: F above 1. If not, the estimate is not above 0.</summary>
    public bool FoundDifferences => F > 1;

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

        var (single, interval, intervalDf) = form switch
        {
            IccForm.OneWaySingle or IccForm.OneWayMean => Ratio(ms.BetweenAthletes, ms.WithinAthletes, ms.DfWithin, ms, level),
            IccForm.ConsistencySingle or IccForm.ConsistencyMean => Ratio(ms.BetweenAthletes, ms.Residual, ms.DfResidual, ms, level),
            IccForm.AgreementSingle or IccForm.AgreementMean => AgreementIcc.Of(ms, level),
            _ => throw IccForms.Unknown(form),
        };
        if (form.IsOfMean())
        {
            single = OfMean(single, ms.Trials);
            interval = new(OfMean(interval.Low, ms.Trials), OfMean(interval.High, ms.Trials), level);
        }

        var f = form.IsOneWay() ? ms.FOneWay : ms.FBetweenAthletes;
        var df = form.IsOneWay() ? ms.DfWithin : ms.DfResidual;
        return new(form, single, interval, ms.Athletes, ms.Trials, table.Athletes - ms.Athletes)
        {
            F = f,
            DfBetween = ms.DfBetweenAthletes,
            DfError = df,
            IntervalDf = intervalDf,
            P = FisherLaw.UpperTail(f, ms.DfBetweenAthletes, df),
        };
    }

    /// <summary>Reliability of the mean of k trials from that of one (Spearman–Brown): k r / (1 + (k − 1) r).</summary>
    /// <param name="single">Reliability of one trial, at most 1.</param>
    /// <param name="trials">Number of trials, above 0.</param>
    public static double OfMean(double single, double trials)
    {
        Require.Positive(trials, nameof(trials));
        // A limit far below 0 may itself be the −∞ of an earlier step.
        if (double.IsNegativeInfinity(single)) return single;
        Require.Within(single, double.MinValue, 1, nameof(single));
        var share = 1 + (trials - 1) * single;
        // A limit this far below 0 (agreement forms only) says nothing about the mean either.
        return share > 0 ? trials * single / share : double.NegativeInfinity;
    }

    /// <summary>Trials to average for a wanted reliability, from that of one: R (1 − r)/(r (1 − R)); round up.</summary>
    /// <param name="single">Reliability of one trial, above 0 and below 1.</param>
    /// <param name="wanted">Reliability wanted of the mean, above 0 and below 1.</param>
    public static double TrialsFor(double single, double wanted)
        => Require.Share(wanted, nameof(wanted)) * (1 - Require.Share(single, nameof(single))) / (single * (1 - wanted));

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

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        $"Intraclass correlation {Form.ShroutFleissName()}, also {Form.McGrawWongName()}",
        Form.IsAgreement()
            ? "absolute agreement; approximate interval with Satterthwaite's degrees of freedom [shroutfleiss1979; mcgrawwong1996]"
            : $"{(Form.IsOneWay() ? "one-way" : "consistency")}; exact F interval for normal errors [shroutfleiss1979; mcgrawwong1996]",
        [
            new("ICC", Value) { Interval = Interval },
            new("F", F) { DegreesOfFreedom = DfBetween, Note = FormattableString.Invariant($"on {DfBetween} and {DfError} df") },
            new("p of no difference", P),
        ])
    {
        Basis = $"{Athletes} athletes, {Trials} trials" + (LeftOut > 0 ? $"; {LeftOut} left out for a missing trial" : string.Empty),
        Remarks =
        [
            .. FoundDifferences ? Array.Empty<string>() : ["No between-athlete variance was found: these athletes differ by no more than the error of the test."],
            .. LeftOut > 0 && !Form.IsAgreement() ? [$"{nameof(VarianceComponents)} uses every athlete, those with a missing trial too."] : Array.Empty<string>(),
        ],
    };

    private static (double Single, Interval Interval, double Df) Ratio(double between, double error, int df, MeanSquares ms, double level)
    {
        int rows = ms.Athletes - 1, k = ms.Trials;
        var value = (between - error) / (between + (k - 1) * error);
        // Trials that repeat exactly leave no error: the ratio is infinite and both limits are 1.
        if (error <= 0) return (value, new(1, 1, level), df);
        var low = between / error / FisherLaw.Quantile((1 + level) / 2, rows, df);
        var high = between / error * FisherLaw.Quantile((1 + level) / 2, df, rows);
        return (value, new((low - 1) / (low + k - 1), (high - 1) / (high + k - 1), level), df);
    }
}

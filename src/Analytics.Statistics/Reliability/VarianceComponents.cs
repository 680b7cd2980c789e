using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Variance between athletes and variance of error from a table with gaps, and the intraclass correlation they make. Nobody with a value is left out.</summary>
/// <remarks>
/// Analysis of variance by fitting constants: athletes adjusted for trials against the residual. The interval is exact for normal errors, gaps or not: with
/// λᵢ and wᵢ the eigenvalues and scores of the adjusted athlete equations, Σ wᵢ²/(1 + θ λᵢ) is a chi-square multiple of the error variance at the true
/// θ = between/error, and its F ratio is solved for θ [wald1947; seely1983]. For a complete table all λᵢ are k and everything equals <see cref="IntraclassCorrelation"/>.
/// </remarks>
/// <param name="Form">One-way or consistency, of one trial or of the mean of all k.</param>
/// <param name="BetweenVariance">Estimate of the variance between athletes; may be negative, which says that none was found.</param>
/// <param name="ErrorVariance">Residual mean square.</param>
/// <param name="Icc">between/(between + error), at most 1; may be negative.</param>
/// <param name="Interval">Interval of the correlation.</param>
/// <param name="F">Variance ratio that tests for no difference between athletes; infinite when trials repeat exactly.</param>
/// <param name="DfBetween">Degrees of freedom of its numerator.</param>
/// <param name="DfError">Degrees of freedom of its denominator.</param>
public sealed record VarianceComponents(
    IccForm Form, double BetweenVariance, double ErrorVariance, double Icc, Interval Interval, double F, int DfBetween, int DfError) : Result
{
    /// <summary>Athletes with at least one value; all of them are used.</summary>
    public required int Athletes { get; init; }

    /// <summary>Athletes of the table without any value.</summary>
    public required int WithoutValue { get; init; }

    /// <summary>Values used.</summary>
    public required int Observations { get; init; }

    /// <summary>Trials (columns).</summary>
    public required int Trials { get; init; }

    /// <summary>Probability of an F at least as large when athletes do not differ; exact for normal errors.</summary>
    public double P => FisherLaw.UpperTail(F, DfBetween, DfError);

    /// <summary>SD between athletes freed of error; null when no between-athlete variance was found.</summary>
    public double? BetweenStandardDeviation => BetweenVariance > 0 ? Math.Sqrt(BetweenVariance) : null;

    /// <summary>Estimates both variances.</summary>
    /// <param name="table">Athletes × trials, gaps allowed.</param>
    /// <param name="form">One-way or consistency. The agreement forms need a complete table.</param>
    /// <param name="level">Coverage of the interval, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">Fewer than 2 athletes with a value, too few repeats to judge error by, no spread at all, or an agreement form.</exception>
    public static VarianceComponents Of(TrialTable table, IccForm form = IccForm.ConsistencySingle, double level = 0.95)
    {
        ArgumentNullException.ThrowIfNull(table);
        Require.Share(level, nameof(level));
        if (form.IsAgreement())
            throw new ArgumentException($"{form.ShroutFleissName()} counts shifts between trials as error and needs a complete table; use {nameof(IntraclassCorrelation)}, which says how many athletes it leaves out.", nameof(form));
        _ = form.ShroutFleissName();
        var equations = AthleteEquations.Of(table, form.IsOneWay());
        if (equations.DfBetween < 1) throw new ArgumentException($"{equations.Athletes} of {table.Athletes} athletes have a value that trials link to another athlete; at least 2 are needed.", nameof(table));
        if (equations.DfError < 1) throw new ArgumentException($"{table.Observations} values of {equations.Athletes} athletes leave no degrees of freedom for error; more repeats are needed.", nameof(table));
        var (between, error, f) = equations.Estimate();
        if (error <= 0 && between <= 0) throw new ArgumentException($"All {table.Observations} values are equal but for the trial; a correlation needs some spread.", nameof(table));

        var icc = between / (between + error);
        var interval = error > 0 ? equations.IccInterval(error, level) : new Interval(1, 1, level);
        if (form.IsOfMean())
        {
            icc = IntraclassCorrelation.OfMean(icc, table.Trials);
            interval = new(IntraclassCorrelation.OfMean(interval.Low, table.Trials), IntraclassCorrelation.OfMean(interval.High, table.Trials), level);
        }

        return new(form, between, error, icc, interval, f, equations.DfBetween, equations.DfError)
        {
            Athletes = equations.Athletes,
            WithoutValue = table.Athletes - equations.Athletes,
            Observations = table.Observations,
            Trials = table.Trials,
        };
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        $"Intraclass correlation {Form.ShroutFleissName()}, also {Form.McGrawWongName()}, gaps allowed",
        "variance components by fitting constants; exact interval [wald1947; seely1983]",
        [
            new("ICC", Icc) { Interval = Interval },
            new("F", F) { DegreesOfFreedom = DfBetween, Note = FormattableString.Invariant($"on {DfBetween} and {DfError} df") },
            new("p of no difference", P),
            new("SD between athletes", BetweenStandardDeviation)
            {
                Note = BetweenStandardDeviation is null ? FormattableString.Invariant($"no between-athlete variance was found (estimate {BetweenVariance:0.####})") : string.Empty,
            },
            new("typical error", Math.Sqrt(ErrorVariance)) { DegreesOfFreedom = DfError },
        ])
    {
        Basis = $"{Observations} values of {Athletes} athletes in {Trials} trials" + (WithoutValue > 0 ? $"; {WithoutValue} athletes have no value" : string.Empty),
        Remarks = BetweenVariance > 0 ? [] : ["No between-athlete variance was found: these athletes differ by no more than the error of the test."],
    };
}

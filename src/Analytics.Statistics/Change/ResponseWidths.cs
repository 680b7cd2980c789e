using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>
/// What it costs to call a response from a narrow interval: for each width the multiple of the typical error and the rate of wrong calls
/// [swinton2018]. A response is called when the whole interval of the change lies beyond the smallest worthwhile change.
/// </summary>
/// <param name="Widths">One row a width, narrow first.</param>
/// <param name="Worthwhile">Smallest worthwhile change in typical errors.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of the typical error; infinity when known.</param>
public sealed record ResponseWidths(IReadOnlyList<ResponseWidth> Widths, double Worthwhile, double DegreesOfFreedom) : Result
{
    private static readonly double[] s_usual = [0.5, 0.75, 0.9, 0.95];

    /// <summary>Makes the table.</summary>
    /// <param name="worthwhile">Smallest worthwhile change in typical errors, 0 or more; 0 is the worst case.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error; infinity when known.</param>
    /// <param name="levels">Coverages, each above 0 and below 1; none for 50, 75, 90 and 95 %.</param>
    public static ResponseWidths Of(double worthwhile = 0, double degreesOfFreedom = double.PositiveInfinity, params IReadOnlyList<double> levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        Require.NotNegative(worthwhile, nameof(worthwhile));
        return new([.. (levels.Count == 0 ? s_usual : levels).Order().Select(level =>
        {
            var t = StudentLaw.TwoSided(level, degreesOfFreedom);
            var rule = new BeyondWorthwhileRule { Level = level };
            return new ResponseWidth(level, t, t * Math.Sqrt(2), rule.ClearRate(0, worthwhile, degreesOfFreedom), (1 - level) / 2);
        })], worthwhile, degreesOfFreedom);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Interval widths for calling a response", "whole interval beyond the smallest worthwhile change [swinton2018]",
        [.. Widths.Select(w => new ResultLine(FormattableString.Invariant($"{100 * w.Level:0.##} % interval"), w.ForChange, "TE")
        {
            Note = FormattableString.Invariant(
                $"wrong for {100 * w.WrongCalls:0.##} % of the unchanged; for at most {100 * w.WrongAtThreshold:0.##} % of those who changed by just the worthwhile amount"),
        })])
    {
        Basis = FormattableString.Invariant($"smallest worthwhile change of {Worthwhile:0.###} typical errors, {(double.IsInfinity(DegreesOfFreedom) ? "known error" : FormattableString.Invariant($"{DegreesOfFreedom:0.#} degrees of freedom"))}"),
    };
}

/// <summary>One width.</summary>
/// <param name="Level">Coverage of the interval.</param>
/// <param name="ForScore">Half-width for one score, in typical errors.</param>
/// <param name="ForChange">Half-width for a change between two tests, in typical errors.</param>
/// <param name="WrongCalls">Rate at which an unchanged athlete is called a responder, either way.</param>
/// <param name="WrongAtThreshold">Largest rate, in one direction, for an athlete who changed by just the worthwhile amount.</param>
public sealed record ResponseWidth(double Level, double ForScore, double ForChange, double WrongCalls, double WrongAtThreshold);

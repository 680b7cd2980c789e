using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>Probabilities about the true change that a named prior and one test give together.</summary>
/// <param name="Above">P(true change &gt; worthwhile).</param>
/// <param name="Within">P(between).</param>
/// <param name="Below">P(true change &lt; −worthwhile).</param>
/// <param name="Worthwhile">Smallest worthwhile change, in the unit of the test.</param>
/// <param name="Prior">The prior, in words.</param>
public sealed record PosteriorShares(double Above, double Within, double Below, double Worthwhile, string Prior) : Result
{
    /// <summary>The same under the alternatives of an estimated prior; empty under a stated one.</summary>
    public IReadOnlyList<PosteriorShares> Alternatives { get; internal init; } = [];

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        FormattableString.Invariant($"Chance that the true change is beyond ±{Worthwhile:0.####}"), "normal prior with normal error",
        [Line("above", s => s.Above), Line("within", s => s.Within), Line("below", s => s.Below)])
    {
        Basis = "one change of known error; prior: " + Prior,
        Remarks = ["Another prior gives other chances. A flat prior is a prior too."],
    };

    private ResultLine Line(string name, Func<PosteriorShares, double> share) => new(name, 100 * share(this), "%")
    {
        Note = Alternatives.Count == 0 ? "" : FormattableString.Invariant(
            $"{100 * Alternatives.Min(share):0} to {100 * Alternatives.Max(share):0} % over the interval of the prior's SD"),
    };
}

using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Change;

/// <summary>How far those picked by one test fall back in the next without any true change (regression to the mean).</summary>
/// <param name="Share">Share of the squad picked from one end.</param>
/// <param name="Reliability">Reliability of the test in this squad.</param>
/// <param name="MeanScore">Mean score of those picked, in SDs from the squad's mean.</param>
public sealed record SelectionEffect(double Share, double Reliability, double MeanScore) : Result
{
    /// <summary>Expected change of those picked, in SDs of the test: −(1 − r) times their mean score.</summary>
    public double ExpectedChange => -(1 - Reliability) * MeanScore;

    /// <summary>Of the best share of a normal squad; picked from the other end the sign turns.</summary>
    /// <param name="share">Share picked, above 0 and below 1.</param>
    /// <param name="reliability">Reliability, 0 to 1.</param>
    public static SelectionEffect OfTop(double share, double reliability)
    {
        var z = NormalLaw.Quantile(Require.Share(share, nameof(share)));
        return new(share, Require.Within(reliability, 0, 1, nameof(reliability)), Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) / share);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Falling back after selection", "regression to the mean of normal scores",
        [new("expected change", ExpectedChange, "SD"), new("mean score of those picked", MeanScore, "SD")])
    { Basis = FormattableString.Invariant($"the best {100 * Share:0.#} % of a squad, reliability {Reliability:0.###}") };
}

using Analytics.Statistics.MixedModels.Inference;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>Likelihood-ratio test of a smaller model inside a larger one.</summary>
/// <param name="ChiSquare">Fall of −2 log L, 0 or more.</param>
/// <param name="DegreesOfFreedom">Parameters more.</param>
/// <param name="P">p by the chi-square law with those degrees of freedom; too large when a variance is tested.</param>
/// <param name="MixtureP">
/// p by the half-and-half mixture of chi-square laws with df − 1 and df, which holds when the larger model has exactly one random effect more:
/// under the smaller model its variance lies on the boundary [selfliang1987; stramlee1994]. Null otherwise.
/// </param>
/// <param name="Criterion">Likelihood used.</param>
public sealed record LikelihoodRatio(double ChiSquare, int DegreesOfFreedom, double P, double? MixtureP, LikelihoodCriterion Criterion) : Result
{
    /// <summary>Compares two fits of the same rows.</summary>
    /// <param name="smaller">The model with fewer parameters.</param>
    /// <param name="larger">The model that contains it.</param>
    /// <exception cref="ArgumentException">Other data, other likelihoods, REML with other fixed effects, or no more parameters.</exception>
    public static LikelihoodRatio Of(MixedModel smaller, MixedModel larger)
    {
        ArgumentNullException.ThrowIfNull(smaller);
        ArgumentNullException.ThrowIfNull(larger);
        if (!smaller.Design.Response.AsSpan().SequenceEqual(larger.Design.Response))
            throw new ArgumentException("The two models were fitted to different responses; a likelihood ratio needs the same rows in the same order.", nameof(larger));
        if (smaller.Criterion != larger.Criterion)
            throw new ArgumentException($"One model was fitted by {smaller.Criterion}, the other by {larger.Criterion}; use one for both.", nameof(larger));
        var sameFixed = smaller.Design.FixedNames.SequenceEqual(larger.Design.FixedNames);
        if (!sameFixed && smaller.Criterion == LikelihoodCriterion.Reml)
            throw new ArgumentException("REML likelihoods of different fixed effects do not compare; fit both by ML.", nameof(larger));
        var (few, many) = (smaller.Design.RandomNames, larger.Design.RandomNames);
        if (few.Except(many).Any() || smaller.Design.FixedNames.Except(larger.Design.FixedNames).Any())
            throw new ArgumentException("The smaller model has an effect that the larger one lacks; it must lie inside the larger one.", nameof(smaller));
        var df = larger.Parameters - smaller.Parameters;
        if (df < 1) throw new ArgumentException($"The larger model has {df} parameters more; at least 1 is needed.", nameof(larger));

        var fall = Math.Max(0, smaller.MinusTwoLogLikelihood - larger.MinusTwoLogLikelihood);
        // One variance more, and with it the covariances of that effect and no other change.
        var oneMore = sameFixed && many.Count == few.Count + 1 && df == (larger.Design.IsCorrelated ? many.Count : 1);
        return new(fall, df, Above(fall, df), oneMore ? (Above(fall, df - 1) + Above(fall, df)) / 2 : null, larger.Criterion);
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Likelihood-ratio test", "fall of −2 log L against the chi-square law [selfliang1987; stramlee1994]",
    [
        new("chi-square", ChiSquare) { DegreesOfFreedom = DegreesOfFreedom },
        new("p", P),
        .. MixtureP is { } p ? new ResultLine[] { new("p, variance on the boundary", p) { Note = "half-and-half mixture; the one to use for a variance" } } : [],
    ])
    {
        Basis = $"two models by {(Criterion == LikelihoodCriterion.Reml ? "restricted maximum likelihood" : "maximum likelihood")}",
    };

    // P(X > x); with 0 degrees of freedom all mass lies at 0.
    private static double Above(double x, int df) => df == 0 ? (x > 0 ? 0 : 1) : ChiSquareTail.Of(x, df);
}

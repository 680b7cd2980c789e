namespace Analytics.Statistics.MixedModels;

/// <summary>Which likelihood is made largest.</summary>
public enum LikelihoodCriterion
{
    /// <summary>Restricted: of what the fixed effects leave. Variances free of the bias that estimating the fixed effects brings; not comparable across fixed effects.</summary>
    Reml,

    /// <summary>Full: variances a little too small, log-likelihoods comparable across fixed effects.</summary>
    Ml,
}

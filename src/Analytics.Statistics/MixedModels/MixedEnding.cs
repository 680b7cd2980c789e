namespace Analytics.Statistics.MixedModels;

/// <summary>How a fit ended.</summary>
public enum MixedEnding
{
    /// <summary>At a maximum with every variance above 0 and every correlation inside −1 to 1.</summary>
    Converged,

    /// <summary>At a maximum where a variance is 0 or a correlation ±1: usable, and said in words.</summary>
    OnBoundary,

    /// <summary>One group only: nothing tells groups apart.</summary>
    TooFewGroups,

    /// <summary>No more rows than fixed effects: no degree of freedom is left.</summary>
    TooFewRows,

    /// <summary>No group has more rows than random effects: they take up everything.</summary>
    MoreEffectsThanRows,

    /// <summary>The response is what the fixed effects say, to the last digit: all equal, or an exact line.</summary>
    NoVariation,

    /// <summary>Within groups the repeats agree to the last digit: no error is left to judge by.</summary>
    NoErrorLeft,

    /// <summary>A fixed column is a combination of others.</summary>
    CollinearFixedEffects,

    /// <summary>A random column is a combination of others.</summary>
    CollinearRandomEffects,

    /// <summary>The fixed effects or the design leave nothing to estimate a variance from.</summary>
    NotIdentified,

    /// <summary>The search did not settle.</summary>
    NotConverged,
}

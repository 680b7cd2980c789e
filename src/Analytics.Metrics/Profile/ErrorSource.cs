namespace Analytics.Metrics.Profile;

/// <summary>Where the typical error of a metric comes from, best first.</summary>
public enum ErrorSource
{
    /// <summary>This squad, tested on days close together: the error between days, made with these people and devices.</summary>
    SeasonRetest,

    /// <summary>A published study: another group's error between tests.</summary>
    PublishedStudy,

    /// <summary>Attempts of the same day: day-to-day variation is missing, so it is too small. Never enough for a verdict.</summary>
    SameDayAttempts,

    /// <summary>Nothing is known.</summary>
    None,
}

/// <summary>How the error of a metric goes with its size.</summary>
public enum ErrorScale
{
    /// <summary>The same number of units at every level.</summary>
    Constant,

    /// <summary>The same share of the value at every level.</summary>
    Proportional,
}

namespace Analytics.Statistics.Summaries;

/// <summary>The nine sample quantiles of Hyndman and Fan [hyndmanfan1996]; x₁ ≤ … ≤ xₙ are the sorted values.</summary>
public enum QuantileType
{
    /// <summary>Type 1: smallest value with a share of at least p at or below it.</summary>
    InverseOfDistribution = 1,

    /// <summary>Type 2: as type 1, but the mean of two neighbours at a step.</summary>
    InverseWithAveraging = 2,

    /// <summary>Type 3: the value whose place is nearest to n p; halves go to the even place.</summary>
    NearestEven = 3,

    /// <summary>Type 4: interpolates at place n p.</summary>
    LinearOfDistribution = 4,

    /// <summary>Type 5: interpolates at place n p + 1/2.</summary>
    MidSteps = 5,

    /// <summary>Type 6: interpolates at place (n + 1) p; wider quartiles than the others.</summary>
    ExpectedShare = 6,

    /// <summary>Type 7: interpolates at place (n − 1) p + 1. The usual default, here too.</summary>
    ModeOfShare = 7,

    /// <summary>Type 8: interpolates at place (n + 1/3) p + 1/3; median-unbiased, whatever the law. Hyndman and Fan recommend it.</summary>
    MedianUnbiased = 8,

    /// <summary>Type 9: interpolates at place (n + 1/4) p + 3/8; nearly unbiased for normal values.</summary>
    NormalUnbiased = 9,
}

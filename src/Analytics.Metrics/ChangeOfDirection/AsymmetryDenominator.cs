namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>What a difference between sides is divided by. Papers differ, so it is always named.</summary>
public enum AsymmetryDenominator
{
    /// <summary>The faster side's figure.</summary>
    Faster,

    /// <summary>The slower side's figure.</summary>
    Slower,

    /// <summary>The mean of both.</summary>
    Mean,
}

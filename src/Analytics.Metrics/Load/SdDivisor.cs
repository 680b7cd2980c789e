namespace Analytics.Metrics.Load;

/// <summary>
/// Divisor of the SD of the seven daily loads. The papers at hand do not say which; the choice moves monotony and strain by 8.01 % (√(7/6)), so values of the two
/// are never compared.
/// </summary>
public enum SdDivisor
{
    /// <summary>n − 1 = 6: the week as a sample. Monotony and strain are lower.</summary>
    Sample,

    /// <summary>n = 7: the week as all there is. Monotony and strain are higher.</summary>
    Population,
}

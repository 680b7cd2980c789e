namespace Analytics.Quantities;

/// <summary>Exact conversion factors, with the definition each follows from.</summary>
public static class UnitFactors
{
    /// <summary>International avoirdupois pound in kilograms (1959 agreement, exact).</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>International foot in metres (1959 agreement, exact).</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>International inch in metres: a twelfth of a foot.</summary>
    public const double MetresPerInch = 0.0254;

    /// <summary>International yard in metres: three feet.</summary>
    public const double MetresPerYard = 0.9144;

    /// <summary>International mile in metres: 1760 yards.</summary>
    public const double MetresPerMile = 1609.344;

    /// <summary>Standard acceleration of gravity, m/s² (3rd General Conference on Weights and Measures, 1901, exact).</summary>
    public const double StandardGravity = 9.80665;
}

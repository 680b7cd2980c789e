using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>Strength set against body mass.</summary>
public static class RelativeStrength
{
    /// <summary>Kilograms lifted per kilogram of body mass (kg/kg).</summary>
    /// <remarks>Simple and common, but it favours light athletes; see <see cref="Allometric"/>.</remarks>
    /// <param name="lifted">Mass lifted.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Body mass is 0.</exception>
    public static double Ratio(Mass lifted, Mass bodyMass) => lifted.Kilograms / Require.Positive(bodyMass, "Body mass").Kilograms;

    /// <summary>Kilograms lifted per kilogram of body mass to the power b.</summary>
    /// <param name="lifted">Mass lifted.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="exponent">The exponent, which stays with the score: scores of two exponents are different scales.</param>
    /// <exception cref="ArgumentOutOfRangeException">Body mass is 0.</exception>
    public static AllometricScore Allometric(Mass lifted, Mass bodyMass, AllometricExponent exponent)
    {
        ArgumentNullException.ThrowIfNull(exponent);
        return new(lifted.Kilograms / Math.Pow(Require.Positive(bodyMass, "Body mass").Kilograms, exponent.Value), exponent);
    }
}

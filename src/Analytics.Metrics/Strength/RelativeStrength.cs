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
    public static double Ratio(Mass lifted, Mass bodyMass) => lifted.Kilograms / Positive(bodyMass).Kilograms;

    /// <summary>Kilograms lifted per kilogram of body mass to the power b.</summary>
    /// <param name="lifted">Mass lifted.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="exponent">The exponent, which stays with the score: scores of two exponents are different scales.</param>
    /// <exception cref="ArgumentOutOfRangeException">Body mass is 0.</exception>
    public static AllometricScore Allometric(Mass lifted, Mass bodyMass, AllometricExponent exponent)
    {
        ArgumentNullException.ThrowIfNull(exponent);
        return new(lifted.Kilograms / Math.Pow(Positive(bodyMass).Kilograms, exponent.Value), exponent);
    }

    private static Mass Positive(Mass bodyMass) => bodyMass > Mass.Zero ? bodyMass
        : throw new ArgumentOutOfRangeException(nameof(bodyMass), bodyMass, $"Body mass must be above 0 kg; got {bodyMass}.");
}

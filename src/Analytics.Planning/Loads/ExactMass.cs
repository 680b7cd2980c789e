using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>
/// Masses as whole numbers, so that sums of plates do not drift. The unit is 10⁻¹⁰ kg: every gram and every hundredth of a pound (0.45359237 kg by definition)
/// is a whole number of it, so plates marked in pounds and in kilograms may even be mixed.
/// </summary>
internal static class ExactMass
{
    private const double PerKilogram = 1e10;
    private const long PerHundredthPound = 45_359_237;

    // Far above any load, far below what a long holds.
    private const double MostKilograms = 1e6;

    /// <summary>Nearest whole number of units; half a unit is far below any scale and above the rounding error of a product.</summary>
    public static long Of(Mass mass) => (long)Math.Round(Math.Min(mass.Kilograms, MostKilograms) * PerKilogram);

    /// <summary>Back, by way of the unit it is marked in: 315 lb is the mass that 315 lb makes.</summary>
    public static Mass ToMass(long units, string unit)
        => unit == "lb" && units % PerHundredthPound == 0 ? Mass.FromPounds(units / PerHundredthPound / 100.0) : Mass.FromKilograms(units / PerKilogram);
}

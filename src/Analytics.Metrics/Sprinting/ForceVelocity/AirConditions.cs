using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Sprinting.ForceVelocity;

/// <summary>The air a sprint is run in, and the drag it puts on a body. Source: [arsac2002].</summary>
public sealed record AirConditions
{
    private const double DensityAtFreezing = 1.293; // kg/m³ at 760 mmHg and 273 K
    private const double FreezingKelvin = 273;
    private const double DragCoefficient = 0.9;

    /// <summary>Makes conditions.</summary>
    /// <param name="pressureMmHg">Barometric pressure in mmHg, 0 to 900; 0 switches drag off.</param>
    /// <param name="celsius">Air temperature in °C, -60 to 60.</param>
    /// <param name="tailwind">Wind along the run, above 0 from behind.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public AirConditions(double pressureMmHg, double celsius, Speed tailwind)
    {
        PressureMmHg = Within(pressureMmHg, 0, 900, nameof(pressureMmHg), "mmHg");
        Celsius = Within(celsius, -60, 60, nameof(celsius), "°C");
        Tailwind = tailwind;
    }

    /// <summary>Still air at 760 mmHg and 20 °C.</summary>
    public static AirConditions Standard { get; } = new(760, 20, Speed.Zero);

    /// <summary>No drag at all, for the closed forms.</summary>
    public static AirConditions NoDrag { get; } = new(0, 20, Speed.Zero);

    /// <summary>Barometric pressure, mmHg.</summary>
    public double PressureMmHg { get; }

    /// <summary>Air temperature, °C.</summary>
    public double Celsius { get; }

    /// <summary>Wind along the run, above 0 from behind.</summary>
    public Speed Tailwind { get; }

    /// <summary>Air density in kg/m³: 1.293·(P/760)·(273/(273 + C)).</summary>
    public double DensityKgPerCubicMetre => DensityAtFreezing * (PressureMmHg / 760) * (FreezingKelvin / (FreezingKelvin + Celsius));

    /// <summary>Frontal area in m²: 0.266 of the body surface 0.2025·h^0.725·m^0.425.</summary>
    /// <param name="stature">h, above 0.</param>
    /// <param name="bodyMass">m, above 0.</param>
    public static double FrontalAreaSquareMetres(Length stature, Mass bodyMass)
        => 0.266 * BodySurfaceSquareMetres(stature, bodyMass);

    /// <summary>Body surface in m²: 0.2025·h^0.725·m^0.425, h in m, m in kg.</summary>
    /// <param name="stature">h, above 0.</param>
    /// <param name="bodyMass">m, above 0.</param>
    public static double BodySurfaceSquareMetres(Length stature, Mass bodyMass)
        => 0.2025 * Math.Pow(Require.Positive(stature, "stature").Metres, 0.725) * Math.Pow(Require.Positive(bodyMass, "body mass").Kilograms, 0.425);

    /// <summary>k in kg/m, so that drag is k·w·|w| at speed w through the air: half of density times frontal area times 0.9.</summary>
    /// <param name="stature">Stature, above 0.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    public double DragKgPerMetre(Length stature, Mass bodyMass)
        => 0.5 * DensityKgPerCubicMetre * FrontalAreaSquareMetres(stature, bodyMass) * DragCoefficient;

    private static double Within(double value, double low, double high, string name, string unit)
        => value >= low && value <= high
            ? value
            : throw new ArgumentOutOfRangeException(name, value, string.Create(CultureInfo.InvariantCulture, $"{name} must be {low} to {high} {unit}; got {value}."));
}

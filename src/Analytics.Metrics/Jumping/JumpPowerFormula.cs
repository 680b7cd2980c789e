using Analytics.Quantities;

namespace Analytics.Metrics.Jumping;

/// <summary>What part of the jump a power formula speaks about. Kinds are never compared.</summary>
public enum JumpPowerKind
{
    /// <summary>Highest power during the push-off.</summary>
    Peak,

    /// <summary>Mean power over the push-off.</summary>
    Mean,

    /// <summary>Mean power of gravity on the falling body, by the older convention of a nomogram; not a push-off power at all.</summary>
    Fall,
}

/// <summary>A published regression from jump height and body mass to power, as data.</summary>
/// <remarks>All give watts from height in cm and mass in kg (stature in cm where asked for), and carry the error of their own sample only.</remarks>
public sealed record JumpPowerFormula
{
    /// <summary>
    /// Above this body mass every formula is marked as extrapolated. The samples are students and general athletes, none of linemen;
    /// the limit itself is ours, no source.
    /// </summary>
    public static Mass ExtrapolatedAbove { get; } = Mass.FromKilograms(110);

    /// <summary>Short name: authors and, where there are several, the kind.</summary>
    public required string Name { get; init; }

    /// <summary>Peak, mean or fall.</summary>
    public required JumpPowerKind Kind { get; init; }

    /// <summary>Formula in one line with units.</summary>
    public required string Expression { get; init; }

    /// <summary>Who it was fitted on.</summary>
    public required string Population { get; init; }

    /// <summary>Fit as published, in words; says when a figure is from memory, "not known" when there is none.</summary>
    public required string Fit { get; init; }

    /// <summary>Standard error of estimate between persons, as printed in the source, in W; null when none could be read there.</summary>
    public double? StandardErrorWatts { get; init; }

    /// <summary>Whether the formula asks for stature.</summary>
    public bool NeedsStature { get; init; }

    /// <summary>Key into docs/references.md.</summary>
    public required string SourceKey { get; init; }

    /// <summary>The regression itself: height in cm, mass in kg, stature in cm (NaN when not given), to W.</summary>
    public required Func<double, double, double, double> Watts { get; init; }

    /// <summary>Power by this formula.</summary>
    /// <param name="height">Jump height, 0 m or more.</param>
    /// <param name="bodyMass">Above 0 kg.</param>
    /// <param name="stature">Above 0 m; needed when <see cref="NeedsStature"/>.</param>
    /// <returns>The estimate; marked, not hidden, where it is an extrapolation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside those ranges.</exception>
    /// <exception cref="ArgumentNullException">Stature left out where the formula needs it.</exception>
    public JumpPowerEstimate Estimate(Length height, Mass bodyMass, Length? stature = null)
    {
        Require.NotNegative(height, "Jump height");
        Require.Positive(bodyMass, "Body mass");
        if (NeedsStature && stature is null)
            throw new ArgumentNullException(nameof(stature), $"{Name} needs the stature; give it, or choose a formula without.");
        var tall = stature is { } s ? Require.Positive(s, "Stature", nameof(stature)).Centimetres : double.NaN;
        var power = Power.FromWatts(Watts(height.Centimetres, bodyMass.Kilograms, tall));
        return new(this, power, power / bodyMass, Doubt(power, bodyMass));
    }

    private static string? Doubt(Power power, Mass bodyMass)
        => power <= Power.Zero ? "no power above 0 W: height and mass are outside what the formula was made for"
            : bodyMass > ExtrapolatedAbove ? $"extrapolated: body mass above {ExtrapolatedAbove:kg|0}"
            : null;
}

/// <summary>Power of one jump by one formula.</summary>
/// <param name="Formula">The formula; its <see cref="JumpPowerFormula.StandardErrorWatts"/> is the doubt of <paramref name="Power"/>.</param>
/// <param name="Power">The power.</param>
/// <param name="PerBodyMass">The power per body mass.</param>
/// <param name="Doubt">A remark that travels with the value; null when there is none.</param>
public sealed record JumpPowerEstimate(JumpPowerFormula Formula, Power Power, PowerPerMass PerBodyMass, string? Doubt);

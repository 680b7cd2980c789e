using Analytics.Simulation.Demo;

namespace Analytics.Simulation.ErrorRates;

/// <summary>A kind of season to be regenerated many times.</summary>
public sealed record Scenario(string Name, DemoOptions Options)
{
    /// <summary>The season as it is kept in data-demo.</summary>
    public static readonly Scenario AsKept = new("as kept", new DemoOptions());

    /// <summary>The two places where a model of the library is known to be wrong are set right.</summary>
    public static readonly Scenario ModelsTrue = new("models true", new DemoOptions { WithStartArtefact = false, WithOwnRepetitionCurves = false });

    /// <summary>True changes of two known sizes.</summary>
    public static readonly Scenario KnownSizes = new("known sizes", new DemoOptions { Changes = ChangePlan.TypicalErrors });
}

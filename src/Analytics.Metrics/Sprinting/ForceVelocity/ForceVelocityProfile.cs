using System.Globalization;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Sprinting.Fits;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Sprinting.ForceVelocity;

/// <summary>
/// Horizontal force-velocity-power profile of a run by the field method: a straight line F = F0 + S·v through samples of the
/// modelled force, V0 = -F0/S, peak power F0·V0/4. Errors are carried on from V and T of the fit by numerical derivatives;
/// body mass, stature and air are taken as exact. Sources: [samozino2016], [morin2011].
/// What it does not tell: force per leg or per step, or anything vertical. With gates only to 20 m, F0 comes out 0.16 to 0.33 N/kg high [haugen2020].
/// </summary>
public sealed record ForceVelocityProfile
{
    private ForceVelocityProfile()
    {
    }

    /// <summary>F0, horizontal force at no speed, in N.</summary>
    public required Estimate F0 { get; init; }

    /// <summary>F0 per body mass, in N/kg.</summary>
    public required Estimate F0PerMass { get; init; }

    /// <summary>V0, speed at no force, in m/s; above top speed because of drag.</summary>
    public required Estimate V0 { get; init; }

    /// <summary>S, slope of the line, in N·s/m.</summary>
    public required Estimate Slope { get; init; }

    /// <summary>Peak power F0·V0/4, in W.</summary>
    public required Estimate PeakPower { get; init; }

    /// <summary>Peak power per body mass, in W/kg.</summary>
    public required Estimate PeakPowerPerMass { get; init; }

    /// <summary>Ratio of horizontal to total force 0.3 s after first movement; no unit.</summary>
    public required Estimate RatioAtStart { get; init; }

    /// <summary>Change of that ratio with speed from 0.3 s on, in s/m.</summary>
    public required Estimate RatioSlope { get; init; }

    /// <summary>Sampling of the line.</summary>
    public required ForceGrid Grid { get; init; }

    /// <summary>The runner and the air.</summary>
    public required SprintForces Forces { get; init; }

    /// <summary>Profile of a fitted run.</summary>
    /// <param name="curve">The fitted run.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="stature">Stature, above 0.</param>
    /// <param name="air">The air; null for still air at 760 mmHg and 20 °C.</param>
    /// <param name="grid">Sampling; null for 0.01 s over five time constants.</param>
    public static ForceVelocityProfile Of(SprintCurve curve, Mass bodyMass, Length stature, AirConditions? air = null, ForceGrid? grid = null)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var run = curve.FromRest;
        grid ??= ForceGrid.Over(run);
        air ??= AirConditions.Standard;
        var (v, tau) = (run.TopSpeed.MetresPerSecond, run.TimeConstant.Seconds);
        // Central differences with a step of 1e-5 of the value: truncation 1e-10 and rounding 1e-11, far below any error carried.
        var (dv, dt) = (1e-5 * v, 1e-5 * tau);
        var (vUp, vDown, tUp, tDown) = (Line(v + dv, tau), Line(v - dv, tau), Line(v, tau + dt), Line(v, tau - dt));

        return Build(new(run, bodyMass, stature, air), grid, (quantity, name)
            => curve.Carry(quantity(Line(v, tau)), (quantity(vUp) - quantity(vDown)) / (2 * dv), (quantity(tUp) - quantity(tDown)) / (2 * dt), name));

        ForceVelocityLine Line(double topSpeed, double timeConstant)
            => ForceVelocityLine.Fit(new(new(Speed.FromMetresPerSecond(topSpeed), Duration.FromSeconds(timeConstant)), bodyMass, stature, air), grid);
    }

    /// <summary>Profile of a run whose error is not known.</summary>
    /// <param name="run">The run from rest.</param>
    /// <param name="bodyMass">Body mass, above 0.</param>
    /// <param name="stature">Stature, above 0.</param>
    /// <param name="air">The air; null for still air at 760 mmHg and 20 °C.</param>
    /// <param name="grid">Sampling; null for 0.01 s over five time constants.</param>
    public static ForceVelocityProfile Of(MonoExponential run, Mass bodyMass, Length stature, AirConditions? air = null, ForceGrid? grid = null)
    {
        ArgumentNullException.ThrowIfNull(run);
        grid ??= ForceGrid.Over(run);
        SprintForces forces = new(run, bodyMass, stature, air ?? AirConditions.Standard);
        var line = ForceVelocityLine.Fit(forces, grid);
        return Build(forces, grid, (quantity, name) => new(quantity(line), null, null, 0, name + "; no error known"));
    }

    private static ForceVelocityProfile Build(SprintForces forces, ForceGrid grid, Func<Func<ForceVelocityLine, double>, string, Estimate> estimate)
    {
        var perMass = 1 / forces.BodyMass.Kilograms;
        var how = string.Create(CultureInfo.InvariantCulture,
            $"force line over 0 to {grid.End} in steps of {grid.Step}, {forces.Air.PressureMmHg} mmHg, {forces.Air.Celsius} °C, tailwind {forces.Air.Tailwind}");
        return new()
        {
            F0 = estimate(l => l.F0, "force at no speed; " + how),
            F0PerMass = estimate(l => l.F0 * perMass, "force at no speed per body mass; " + how),
            V0 = estimate(l => l.V0, "speed at no force; " + how),
            Slope = estimate(l => l.Slope, "slope of force on speed; " + how),
            PeakPower = estimate(l => l.PeakPower, "peak power; " + how),
            PeakPowerPerMass = estimate(l => l.PeakPower * perMass, "peak power per body mass; " + how),
            RatioAtStart = estimate(l => l.RatioAtStart, "force ratio at 0.3 s; " + how),
            RatioSlope = estimate(l => l.RatioSlope, "force ratio on speed from 0.3 s; " + how),
            Grid = grid,
            Forces = forces,
        };
    }
}

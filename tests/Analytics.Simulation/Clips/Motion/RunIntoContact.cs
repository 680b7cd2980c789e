using Analytics.Metrics.Motion;
using Analytics.Simulation.Clips.Body;

namespace Analytics.Simulation.Clips.Motion;

/// <summary>
/// One repetition with everything true about it, exact at any time t in s since first movement. The centre of mass follows x = V(t − T(1 − e^(−t/T))); from contact on a push of raised-cosine shape
/// takes away a stated speed and turns the trunk by a stated angle. Angles of trunk and limbs are given functions, and the hips stand where the centre of mass of all fourteen segments
/// comes out right. Kinematics only: no forces, no ground, everything in one plane.
/// </summary>
public sealed record RunIntoContact
{
    /// <summary>Lean of the trunk in the set position.</summary>
    public const double SetLeanDegrees = 74;

    private const double TrunkSeconds = 0.11, HeightSeconds = 0.12;

    public required BodyLengths Body { get; init; }

    /// <summary>V.</summary>
    public required double SpeedMetresPerSecond { get; init; }

    /// <summary>T.</summary>
    public required double TimeConstantSeconds { get; init; }

    /// <summary>From first movement to the first touch.</summary>
    public required double ContactSeconds { get; init; }

    public required double MassKilograms { get; init; }

    /// <summary>Lean the trunk comes up to.</summary>
    public double ApproachLeanDegrees { get; init; } = 42;

    /// <summary>Forward speed taken away by the contact.</summary>
    public double SpeedLost { get; init; } = 1.6;

    /// <summary>Turn of the trunk by the contact; negative is thrown back. A stiff trunk turns little.</summary>
    public double TrunkTurnDegrees { get; init; } = -8;

    /// <summary>Length of the push.</summary>
    public double PushSeconds { get; init; } = 0.15;

    public Gait Gait { get; init; } = new();

    /// <summary>Which leg is in front in the set position: the near one, or the far one.</summary>
    public bool NearLegInFront { get; init; } = true;

    /// <summary>Distance of the centre of mass from where it stood.</summary>
    public double X(double t)
        => (SpeedMetresPerSecond * Curves.Onset(t, TimeConstantSeconds)) - (SpeedLost * Curves.PushIntegral(t - ContactSeconds, PushSeconds));

    /// <summary>Forward speed of the centre of mass.</summary>
    public double SpeedX(double t)
        => (SpeedMetresPerSecond * Curves.OnsetRate(t, TimeConstantSeconds)) - (SpeedLost * Curves.Push(t - ContactSeconds, PushSeconds));

    /// <summary>Height of the centre of mass: rises from 0.38 to 0.50 of stature.</summary>
    public double Y(double t) => Body.StatureMetres * (0.38 + (0.12 * Curves.Rise(t, HeightSeconds)));

    /// <summary>Upward speed of the centre of mass.</summary>
    public double SpeedY(double t) => Body.StatureMetres * 0.12 * Curves.RiseRate(t, HeightSeconds);

    /// <summary>Momentum in kg·m/s.</summary>
    public double Momentum(double t) => MassKilograms * SpeedX(t);

    /// <summary>Lean of the trunk, hips to shoulders.</summary>
    public double TrunkLean(double t)
        => SetLeanDegrees + ((ApproachLeanDegrees - SetLeanDegrees) * Curves.Rise(t, TrunkSeconds)) + (TrunkTurnDegrees * Curves.Push(t - ContactSeconds, PushSeconds));

    /// <summary>Lean of the shin, ankle to knee.</summary>
    public double ShinLean(double t, bool far = false) => Gait.Shank(Phase(t, far));

    /// <summary>Bend of the knee.</summary>
    public double KneeFlexion(double t, bool far = false) => Gait.Knee(Phase(t, far));

    /// <summary>Bend of the hip: the trunk's lean less the thigh's.</summary>
    public double HipFlexion(double t, bool far = false) => TrunkLean(t) - Gait.Thigh(Phase(t, far));

    /// <summary>Distance covered from first movement to contact.</summary>
    public double GapMetres => X(ContactSeconds);

    /// <summary>All landmarks at a time.</summary>
    public IReadOnlyDictionary<MarkerRole, Point> Landmarks(double t)
    {
        var fromHip = Posture.About(Body, Gait, TrunkLean(t), Phase(t, far: false), Phase(t, far: true));
        var shift = new Point(X(t), Y(t)) - SegmentMasses.Centre(fromHip);
        return fromHip.ToDictionary(p => p.Key, p => p.Value + shift);
    }

    private double Phase(double t, bool far) => Gait.Phase(t) + (far == NearLegInFront ? Math.PI : 0);
}

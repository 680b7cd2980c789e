using Analytics.Metrics.Motion;
using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;
using Analytics.Simulation.Clips;
using Analytics.Simulation.Clips.Body;
using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Tests.Clips;

/// <summary>The truth agrees with itself and with the library's own definitions.</summary>
public class RunIntoContactTests
{
    // Before first movement, in the set position's first moments, under way, at contact, inside the push, after it.
    private static readonly double[] Moments = [-0.1, 0.03, 0.2, 0.35, 0.45, 0.5, 0.56, 0.75];

    private static RunIntoContact Run(int which) => RunDraw.Anybody(RandomNumbers.For(7, "truth", which));

    /// <summary>Five-point central difference of a smooth function: error of order h⁴.</summary>
    private static double Slope(Func<double, double> f, double t)
    {
        const double h = 1e-4;
        return (f(t - (2 * h)) - (8 * f(t - h)) + (8 * f(t + h)) - f(t + (2 * h))) / (12 * h);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void SpeedX_IsTheDerivativeOfX_AndUpwardSpeedThatOfY(int which)
    {
        var run = Run(which);
        foreach (var t in Moments)
        {
            Assert.Equal(Slope(run.X, t), run.SpeedX(t), 1e-8);
            Assert.Equal(Slope(run.Y, t), run.SpeedY(t), 1e-8);
        }
    }

    /// <summary>The library's centre of mass of the true landmarks is the stated one: masses typed twice, summed two ways.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Landmarks_TheirCentreOfMassByTheLibrary_IsTheStatedOne(int which)
    {
        var run = Run(which);
        foreach (var t in Moments)
        {
            var landmarks = run.Landmarks(t);
            var centre = CentreOfMass.OfBody(SegmentTable.DeLevaMale, landmarks.Keys);
            Assert.Equal(1, centre.MassShare, 12);
            Assert.Empty(centre.Missing);
            var at = centre.Of(landmarks.ToDictionary(p => p.Key, p => new PlanePoint(p.Value.X, p.Value.Y))).Point;
            Assert.Equal(run.X(t), at.XMetres, 12);
            Assert.Equal(run.Y(t), at.YMetres, 12);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Angles_OfTheLandmarksByTheLibrary_AreTheStatedOnes(int which)
    {
        var run = Run(which);
        foreach (var t in Moments)
        {
            var at = run.Landmarks(t).ToDictionary(p => p.Key, p => new PlanePoint(p.Value.X, p.Value.Y));
            Assert.Equal(run.TrunkLean(t), SegmentAngle.Of(at[MarkerRole.Shoulder], at[MarkerRole.Hip]).Lean.Degrees, 9);
            Assert.Equal(run.ShinLean(t), SegmentAngle.Of(at[MarkerRole.Knee], at[MarkerRole.Ankle]).Lean.Degrees, 9);
            Assert.Equal(run.ShinLean(t, far: true), SegmentAngle.Of(at[MarkerRole.FarKnee], at[MarkerRole.FarAnkle]).Lean.Degrees, 9);
            Assert.Equal(run.KneeFlexion(t), JointAngle.Knee(at[MarkerRole.Hip], at[MarkerRole.Knee], at[MarkerRole.Ankle]).Value.Degrees, 9);
            Assert.Equal(run.HipFlexion(t), JointAngle.Hip(at[MarkerRole.Shoulder], at[MarkerRole.Hip], at[MarkerRole.Knee]).Value.Degrees, 9);
        }
    }

    /// <summary>Segments keep their lengths, whatever the posture.</summary>
    [Fact]
    public void Landmarks_SegmentsKeepTheirLengths()
    {
        var run = Run(4);
        foreach (var t in Moments)
        {
            var at = run.Landmarks(t);
            double Between(MarkerRole a, MarkerRole b) => double.Hypot(at[a].X - at[b].X, at[a].Y - at[b].Y);
            Assert.Equal(run.Body.Thigh, Between(MarkerRole.Hip, MarkerRole.Knee), 12);
            Assert.Equal(run.Body.Shank, Between(MarkerRole.FarKnee, MarkerRole.FarAnkle), 12);
            Assert.Equal(run.Body.Foot, Between(MarkerRole.Heel, MarkerRole.Toe), 12);
            Assert.Equal(double.Hypot(run.Body.AnkleFromHeel, run.Body.AnkleHeight), Between(MarkerRole.Ankle, MarkerRole.Heel), 12);
            Assert.Equal(run.Body.Head, Between(MarkerRole.HeadVertex, MarkerRole.Neck), 12);
        }
    }

    /// <summary>Until contact the centre of mass is the library's mono-exponential run.</summary>
    [Fact]
    public void X_UntilContact_IsTheMonoExponentialRun()
    {
        var run = Run(5);
        var curve = new MonoExponential(Speed.FromMetresPerSecond(run.SpeedMetresPerSecond), Duration.FromSeconds(run.TimeConstantSeconds));
        Assert.Equal(run.ContactSeconds, curve.TimeTo(Length.FromMetres(run.GapMetres)).Seconds, 9);
        Assert.Equal(run.SpeedX(run.ContactSeconds), curve.SpeedAt(Length.FromMetres(run.GapMetres)).MetresPerSecond, 9);
        Assert.Equal(0, run.SpeedX(-0.05));
    }

    /// <summary>By the end of the push the contact has taken away what it says, no more and no less.</summary>
    [Fact]
    public void Push_TakesAwayTheStatedSpeedAndTurnsTheTrunkByTheStatedAngle()
    {
        var run = Run(6);
        var free = run with { SpeedLost = 0, TrunkTurnDegrees = 0 };
        var end = run.ContactSeconds + run.PushSeconds;
        Assert.Equal(run.SpeedLost, free.SpeedX(end) - run.SpeedX(end), 12);
        Assert.Equal(run.TrunkTurnDegrees, run.TrunkLean(end) - free.TrunkLean(end), 12);
        Assert.Equal(free.SpeedX(run.ContactSeconds), run.SpeedX(run.ContactSeconds), 12);
    }

    [Fact]
    public void SegmentMasses_OfTheFourteenSegments_SumToOne_SoACommonShiftMovesTheCentreAsMuch()
    {
        var at = Run(8).Landmarks(0.3);
        var moved = at.ToDictionary(p => p.Key, p => p.Value + new Point(3, -1));
        Assert.Equal(SegmentMasses.Centre(at).X + 3, SegmentMasses.Centre(moved).X, 12);
        Assert.Equal(SegmentMasses.Centre(at).Y - 1, SegmentMasses.Centre(moved).Y, 12);
    }
}

using Analytics.Metrics.Sprinting.Curve;
using Analytics.Metrics.Sprinting.ForceVelocity;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.ForceVelocity;

/// <summary>Formulas of [arsac2002] and [samozino2016]; figures by 50-digit arithmetic from them.</summary>
public class SprintForcesTests
{
    [Theory]
    [InlineData(760, 20, 1.20474061433)]
    [InlineData(760, 25, 1.18452684564)]
    [InlineData(740, 30, 1.13432282439)]
    [InlineData(620, 25, 0.966324531968)]
    public void Density_PressureAndTemperature(double mmHg, double celsius, double expected)
        => Assert.Equal(expected, new AirConditions(mmHg, celsius, Speed.Zero).DensityKgPerCubicMetre, 1e-11);

    [Theory]
    [InlineData(1.85, 90, 0.569585905126, 0.308791472966)]
    [InlineData(1.75, 70, 0.491672498047, 0.266552022307)]
    [InlineData(1.80, 80, 0.531119778908, 0.287937705927)]
    [InlineData(1.95, 94, 0.602783138217, 0.326788797711)]
    [InlineData(1.95, 140, 0.71398020729, 0.387072429099)]
    public void Drag_StatureAndMass(double stature, double mass, double area, double drag)
    {
        Assert.Equal(area, AirConditions.FrontalAreaSquareMetres(Length.FromMetres(stature), Mass.FromKilograms(mass)), 1e-11);
        Assert.Equal(drag, AirConditions.Standard.DragKgPerMetre(Length.FromMetres(stature), Mass.FromKilograms(mass)), 1e-11);
    }

    [Fact]
    public void BodySurface_WorkedExample()
        => Assert.Equal(2.14130039521, AirConditions.BodySurfaceSquareMetres(Length.FromMetres(1.85), Mass.FromKilograms(90)), 1e-11);

    [Theory]
    [InlineData(0, 0, 7.72727272727, 0, 695.454545455, 0, 0.618782390325, 51.77272742)]
    [InlineData(0.3, 2.02894671308, 5.88277571538, 1.27117862468, 530.720993009, 1076.80461433, 0.515195801539, 58.98945647)]
    [InlineData(0.5, 3.10474043901, 4.90478141908, 2.97656859858, 444.406896316, 1379.76806237, 0.449605181469, 63.28164437)]
    [InlineData(1, 5.075432267, 3.11324339363, 7.9544722643, 288.146377691, 1462.46742295, 0.310258261486, 71.92520479)]
    [InlineData(2, 7.12027480495, 1.25429563186, 15.6552068402, 128.541813708, 915.253037525, 0.144071550673, 81.71648155)]
    [InlineData(4, 8.27604216308, 0.203598033566, 21.1500154146, 39.4738384356, 326.687151231, 0.0446646788276, 87.44005077)]
    public void At_TimeTable_Agrees(double t, double v, double a, double air, double force, double power, double ratio, double degrees)
    {
        var point = Athlete(AirConditions.Standard).At(Duration.FromSeconds(t));
        Assert.Equal(v, point.Speed.MetresPerSecond, 1e-10);
        Assert.Equal(a, point.Acceleration.MetresPerSecondSquared, 1e-10);
        Assert.Equal(air, point.Drag.Newtons, 1e-9);
        Assert.Equal(force, point.Horizontal.Newtons, 1e-8);
        Assert.Equal(power, point.Power.Watts, 1e-7);
        Assert.Equal(ratio, point.Ratio, 1e-11);
        Assert.Equal(degrees, point.Direction.Degrees, 1e-7);
    }

    [Fact]
    public void PeakPower_WithDrag_IsTheExactMaximum()
    {
        var peak = Athlete(AirConditions.Standard).PeakPower();
        Assert.Equal(4.35749298606, peak.Speed.MetresPerSecond, 1e-10);
        Assert.Equal(1502.44460835, peak.Power.Watts, 1e-8);
        Assert.Equal(0.790641500014, peak.Time.Seconds, 1e-10);
    }

    // No drag: v = V/2, t = T ln 2, P = m V²/(4 T) = 90·8.5²/(4·1.1).
    [Fact]
    public void PeakPower_NoDrag_IsTheClosedForm()
    {
        var peak = Athlete(AirConditions.NoDrag).PeakPower();
        Assert.Equal(4.25, peak.Speed.MetresPerSecond, 1e-12);
        Assert.Equal(1.1 * 0.693147180559945, peak.Time.Seconds, 1e-12);
        Assert.Equal(1477.84090909091, peak.Power.Watts, 1e-9);
    }

    [Theory]
    [InlineData(-1, 20, "pressureMmHg")]
    [InlineData(1013, 20, "pressureMmHg")]
    [InlineData(760, 293, "celsius")]
    public void Air_OutsideItsRange_NamesTheNumber(double mmHg, double celsius, string name)
        => Assert.Equal(name, Assert.Throws<ArgumentOutOfRangeException>(() => new AirConditions(mmHg, celsius, Speed.Zero)).ParamName);

    private static SprintForces Athlete(AirConditions air)
        => new(new MonoExponential(Speed.FromMetresPerSecond(8.5), Duration.FromSeconds(1.1)), Mass.FromKilograms(90), Length.FromMetres(1.85), air);
}

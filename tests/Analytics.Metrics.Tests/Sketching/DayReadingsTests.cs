using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

public class DayReadingsTests
{
    public static TheoryData<string> Ids => [.. MetricCatalogue.All.Select(m => m.Id)];

    // The full day holds a trial of every kind, so none may be missing.
    [Theory, MemberData(nameof(Ids))]
    public void Unit_OfEveryLibraryMetric_CanBeReadAndIsThatOfItsValue(string id)
    {
        var unit = UnitExpression.Parse(MetricCatalogue.Get(id).Unit);

        Assert.True(unit.ToSi > 0);
        Assert.True(FullDay.Good.Value(id)!.Value.Dimension.IsSameAs(unit.Dimension));
    }

    // 180 kg once, at 90 kg: 2 kg/kg, by hand.
    [Fact]
    public void Value_IsTheDaysValueWithItsUnit()
    {
        var day = Sketches.Lifted("a1", 180, 170);

        Assert.Equal(180, day.Value("back_squat_1rm")!.Value.In("kg"), 1e-9);
        Assert.Equal(2, (day.Value("back_squat_1rm") / day.BodyMass)!.Value.In("1"), 1e-9);
        Assert.Null(day.Value("cmj_height"));
        Assert.Null(day.Value("cmj_height") / day.BodyMass);
    }

    // Two attempts on the mat, one on the plate: the mat counts with its best (docs/metrics.md), and changed trials are another day.
    [Fact]
    public void Value_TwoScales_TakesTheOneWithMoreAttempts()
    {
        JumpTrial Jump(JumpMethod method, double cm) => Days.Jump(JumpKind.Countermovement, method) with { Height = Length.FromCentimetres(cm) };
        var day = Days.With(Jump(JumpMethod.Mat, 40), Jump(JumpMethod.ForcePlate, 36), Jump(JumpMethod.Mat, 42));

        Assert.Equal(42, day.Value("cmj_height")!.Value.In("cm"), 1e-9);
        Assert.Equal(36, (day with { Trials = [day.Trials[1]] }).Value("cmj_height")!.Value.In("cm"), 1e-9);
    }

    [Fact]
    public void Value_Unknown_ListsTheKnownOnes()
        => Assert.StartsWith("No metric 'x'; known: ", Assert.Throws<KeyNotFoundException>(() => Days.Empty.Value("x")).Message, StringComparison.Ordinal);

    [Fact]
    public void Value_ArgumentsMissing_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => ((AthleteDay)null!).Value("cmj_height"));
        Assert.Throws<ArgumentNullException>(() => Days.Empty.Value(null!));
    }
}

using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Side = Analytics.Metrics.Trials.Side;

namespace Analytics.Metrics.Tests.Catalogue;

public class AttemptFormulaTests
{
    private static readonly Length s_ten = Length.FromYards(10);

    private static readonly AttemptFormula s_runSpeed = AttemptFormula.Each<SprintTrial>("m/s", (run, _) => run.Splits[0].Distance / run.Splits[0].Time);

    private static readonly AttemptFormula s_bestTime = AttemptFormula.Day("s", day => day.Of<SprintTrial>().Min(s => s.TimeAt(s_ten)!.Value));

    // 9.144 m in 1.6 s and 1.8 s: 5.715 and 5.08 m/s, by hand.
    [Fact]
    public void Each_HandAndElectronic_StayOnTwoScales()
    {
        var values = s_runSpeed.Of(Days.With(Sprint(TimingMethod.Hand, 1.6), Sprint(TimingMethod.Electronic, 1.8))).ToList();

        Assert.Equal([("hand, three-point start", 5.715), ("electronic, three-point start", 5.08)], values.Select(v => (v.Series, Math.Round(v.Value, 9))));
    }

    // The mean of a run and the others of its day is made of both scales, and says so: it compares with neither.
    [Fact]
    public void Each_ThatLooksAtTheOtherScaleToo_IsOnAScaleOfBoth()
    {
        var formula = AttemptFormula.Each<SprintTrial>("s", (_, day) => Duration.FromSeconds(day.Of<SprintTrial>().Average(s => s.Splits[0].Time.Seconds)));
        var values = formula.Of(Days.With(Sprint(TimingMethod.Hand, 1.6), Sprint(TimingMethod.Electronic, 1.8))).ToList();

        Assert.All(values, v => Assert.Equal(("electronic, three-point start; hand, three-point start", 1.7), (v.Series, Math.Round(v.Value, 9))));
    }

    [Theory]
    [InlineData(1.6, 1.8, "hand, three-point start")]
    [InlineData(1.9, 1.8, "electronic, three-point start")]
    public void Day_BestOfTwoTimings_IsOnTheScaleOfTheBest(double hand, double electronic, string series)
        => Assert.Equal(series, Only(s_bestTime, Sprint(TimingMethod.Hand, hand), Sprint(TimingMethod.Electronic, electronic)).Series);

    // Either could be left out, so neither alone is the scale; without a name it would pass for a third one.
    [Fact]
    public void Day_BestOfTwoTimingsThatTie_NamesBoth()
        => Assert.Equal("electronic, three-point start; hand, three-point start", Only(s_bestTime, Sprint(TimingMethod.Hand, 1.7), Sprint(TimingMethod.Electronic, 1.7)).Series);

    [Fact]
    public void Day_FallsBackOnHandTimes_IsOnTheScaleItFellOn()
    {
        var formula = AttemptFormula.Day("s", day => (day.Of<SprintTrial>().FirstOrDefault(s => s.Timing == TimingMethod.Electronic) ?? day.Of<SprintTrial>().FirstOrDefault())?.Splits[0].Time);

        Assert.Equal("electronic, three-point start", Only(formula, Sprint(TimingMethod.Hand, 1.6), Sprint(TimingMethod.Electronic, 1.8)).Series);
        Assert.Equal("hand, three-point start", Only(formula, Sprint(TimingMethod.Hand, 1.6)).Series);
    }

    // Start types are other scales, as in the library's own times.
    [Fact]
    public void Day_TwoStarts_AreTwoScales()
    {
        var other = Sprint(TimingMethod.Electronic, 1.5) with { Start = StartType.FirstMovement };

        Assert.Equal("electronic, start at first movement", Only(s_bestTime, Sprint(TimingMethod.Electronic, 1.8), other).Series);
    }

    [Fact]
    public void Each_DropJumps_AreOnTheScaleOfTheirBox()
    {
        var formula = AttemptFormula.Each<JumpTrial>("m/s", (jump, _) => jump is { Height: { } h, ContactTime: { } t } ? (AnyQuantity)h / t : null);
        var values = formula.Of(Days.With(Drop(30, 32), Drop(45, 33), Drop(null, 31))).ToList();

        Assert.Equal(["mat, box 30 cm", "mat, box 45 cm", "mat, box height not noted"], values.Select(v => v.Series));
        Assert.Equal([1.6, 1.65, 1.55], values.Select(v => Math.Round(v.Value, 9)));
    }

    [Fact]
    public void Day_TwoBallsAndSides_AreOnTheirScales()
    {
        var formula = AttemptFormula.Day("m", day => day.Of<ThrowTrial>().MaxBy(t => t.Distance.Metres)?.Distance);

        Assert.Equal("3 kg", Only(formula, Days.Throw("overhead_back", 3, 14), Days.Throw("overhead_back", 4, 12)).Series);
        Assert.Equal("4 kg", Only(formula, Days.Throw("overhead_back", 3, 14), Days.Throw("overhead_back", 4, 15)).Series);
        Assert.Equal("3 kg, left", Only(formula, Days.Throw("rotational", 3, 9, Side.Left), Days.Throw("rotational", 3, 8, Side.Right)).Series);
    }

    // Two tests of one scale each: both count, in a fixed order, and tests that have no part do not.
    [Fact]
    public void Day_RatioOfTwoTests_NamesTheScalesOfBoth()
    {
        var formula = AttemptFormula.Day("1", day => day.Of<JumpTrial>().First(j => j.Kind == JumpKind.Countermovement).Height / (AnyQuantity?)day.Of<JumpTrial>().First(j => j.Kind == JumpKind.Squat).Height);
        var value = Only(formula, Jump(JumpKind.Countermovement, JumpMethod.Mat, 40), Jump(JumpKind.Squat, JumpMethod.ForcePlate, 32), Sprint(TimingMethod.Hand, 1.6), Drop(30, 32));

        Assert.Equal(("force plate; mat", 1.25), (value.Series, Math.Round(value.Value, 9)));
    }

    [Fact]
    public void Day_LiftsAndBodyOnly_HasOneScale()
    {
        var value = Only(AttemptFormula.Day("kg/kg", day => day.Of<LiftSet>().First().Load / (AnyQuantity?)day.BodyMass), Days.Lift("back_squat", 180, 1), Sprint(TimingMethod.Hand, 1.6));

        Assert.Equal(("", 2.0), (value.Series, value.Value));
    }

    [Fact]
    public void Of_OldBodyMass_IsRemarkedOnOnlyWhereMassIsUsed()
    {
        var day = Days.With(Days.Lift("back_squat", 180, 1)) with { BodyMassDate = Days.Date.AddDays(-15) };
        var (with, without) = (AttemptFormula.Each<LiftSet>("kg/kg", (set, d) => set.Load / (AnyQuantity?)d.BodyMass), AttemptFormula.Each<LiftSet>("kg", (set, _) => set.Load));

        Assert.Equal("body mass from 15 February 2026", with.Of(day).Single().Doubt);
        Assert.Null(without.Of(day).Single().Doubt);
        Assert.Null(with.Of(day with { BodyMassDate = Days.Date.AddDays(-14) }).Single().Doubt);
        // A date without a mass is no mass: the formula that needs none stands.
        Assert.Null(without.Of(day with { BodyMass = null }).Single().Doubt);
    }

    [Fact]
    public void Of_AttemptsWithoutValue_AreLeftOutAndInfiniteOnesKept()
    {
        var formula = AttemptFormula.Each<ThrowTrial>("1/m", (t, _) => t.Throw == "other" ? null : 1 / (AnyQuantity)t.Distance);
        var values = formula.Of(Days.With(Days.Throw("overhead_back", 3, 8), Days.Throw("other", 3, 9), Days.Throw("overhead_back", 3, 0))).ToList();

        Assert.Equal([0.125, double.PositiveInfinity], values.Select(v => v.Value));
    }

    [Fact]
    public void Of_NothingOverNothing_IsNoValue()
    {
        var formula = AttemptFormula.Each<ThrowTrial>("m/kg", (t, day) => (AnyQuantity)t.Distance / day.BodyMass);
        var day = Days.With(Days.Throw("overhead_back", 3, 0)) with { BodyMass = Mass.FromKilograms(0) };

        Assert.Empty(formula.Of(day));
    }

    [Fact]
    public void Of_AnotherDimension_IsRefused()
        => Assert.Equal("the formula gives a value in kg, which is no number of m", Assert.Throws<UnitMismatchException>(() => AttemptFormula.Each<LiftSet>("m", (set, _) => set.Load).Of(Days.With(Days.Lift("x", 1, 1)))).Message);

    [Fact]
    public void Of_SameDayTwice_IsWorkedOutOnce()
    {
        var asked = 0;
        var formula = AttemptFormula.Day("1", _ => ++asked);
        var day = Days.With();

        Assert.Equal(1, formula.Of(day).Single().Value);
        Assert.Equal(1, formula.Of(day).Single().Value);
        Assert.Equal(2, formula.Of(day with { }).Single().Value);
    }

    [Fact]
    public void Arguments_Missing_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => AttemptFormula.Each<LiftSet>("kg", null!));
        Assert.Throws<ArgumentNullException>(() => AttemptFormula.Day("kg", null!));
        Assert.Throws<ArgumentNullException>(() => s_runSpeed.Of(null!));
        Assert.Throws<FormatException>(() => AttemptFormula.Day("stone", _ => null));
        Assert.Equal("m/s", s_runSpeed.Unit.Text);
    }

    // As a metric it keeps hand and electronic apart like the library's own.
    [Fact]
    public void MetricDay_OfAFormula_ComparesTheCommonScaleOnly()
    {
        var metric = MetricCatalogue.Get("sprint_10yd") with { Id = "own", Unit = "m/s", FromTrials = s_runSpeed.Of };
        var day = MetricDay.Of(metric,
        [
            Days.With(Sprint(TimingMethod.Electronic, 1.8)), Days.With(Sprint(TimingMethod.Electronic, 1.9)) with { AthleteId = "a2" }, Days.With(Sprint(TimingMethod.Hand, 1.6)) with { AthleteId = "a3" },
        ]);

        Assert.Equal(("electronic, three-point start", 2, "a3"), (day.Series, day.Values.Count, day.NotCompared.Single().AthleteId));
    }

    private static TrialValue Only(AttemptFormula formula, params Trial[] trials) => formula.Of(Days.With(trials)).Single();

    private static SprintTrial Sprint(TimingMethod timing, double seconds) => new()
    {
        AthleteId = "a1", Date = Days.Date, Timing = timing, Start = StartType.ThreePointHand, Splits = [new(s_ten, Duration.FromSeconds(seconds))],
    };

    private static JumpTrial Jump(JumpKind kind, JumpMethod method, double centimetres) => Days.Jump(kind, method) with { Height = Length.FromCentimetres(centimetres) };

    private static JumpTrial Drop(double? boxCentimetres, double centimetres) => Jump(JumpKind.Drop, JumpMethod.Mat, centimetres) with
    {
        ContactTime = Duration.FromSeconds(0.2), ObstacleHeight = boxCentimetres is { } b ? Length.FromCentimetres(b) : null,
    };
}

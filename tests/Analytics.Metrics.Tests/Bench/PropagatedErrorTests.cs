using Analytics.Metrics.Bench;
using Analytics.Metrics.Bench.Inputs;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Tests.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Bench;

/// <summary>
/// Errors carried through formulas against their closed forms [jcgm101]: squats and body masses of 40 players whose retest differs by exactly ±4 % and ±2 %, so that
/// the typical errors are √(40/39)/√2 = 0.716115 of these: 2.8645 % and 1.4322 %.
/// </summary>
public class PropagatedErrorTests
{
    private const int Players = 40;
    private const double Squat = 2.86446, Mass = 1.43223;

    // 30 players × 60 draws: an SD is known to 1/√3600 = 1.7 % of itself; allowed three of these.
    private const double Tolerance = 0.05;

    // Signs of the two differences: a half of the players each, and they go together, apart or against each other.
    private static int Sign(int i) => i % 2 == 0 ? 1 : -1;

    private static int Apart(int i) => i / 2 % 2 == 0 ? 1 : -1;

    // Relative variances of a product add: √(2.86446² + 1.43223²) = 3.20256 % of 100 kg × 80 kg.
    [Fact]
    public void Product_OfInputsThatErrByThemselves_AddsTheirRelativeVariances()
    {
        var error = Of((set, day) => (AnyQuantity)set.Load * day.BodyMass!.Value, "kg²", Apart);

        Assert.Equal(0.0320256 * 8000, error.ByThemselves!.Value, Tolerance * 256);
        // Uncorrelated on the retest days, so together they do the same; and the error seen is theirs.
        Assert.Equal(error.ByThemselves.Value, error.Together!.Value, Tolerance * 256);
        // Not drawn: e^x of half a difference, 0.03 at most, in the place of x, which is off by no more than 0.03²/2 = 0.045 %.
        Assert.Equal(0.0320256 * 8000, error.Observed!.Value, 4.5e-4 * 256);
        Assert.Equal(1, error.Ratio!.Value, Tolerance);
        Assert.True(error.RatioInterval!.Value.Contains(1));
        Assert.False(error.IsLarge);
        Assert.Equal("The error seen between days is about what its inputs' errors make: nothing else of size adds to it.", error.Explanation);
        // Parts of the variance: 2.86446²/3.20256² = 0.8 and 0.2.
        Assert.Equal(["load of back squat", "body mass"], error.Inputs.Select(i => i.Name));
        Assert.Equal(0.8, error.Inputs[0].Share, 0.03);
        Assert.Equal(0.2, error.Inputs[1].Share, 0.03);
        Assert.Equal(Squat, error.Inputs[0].Percent, 1e-3);
        Assert.Equal(Mass, error.Inputs[1].Percent, 1e-3);
        Assert.All(error.Inputs, i => Assert.True(i.IsOwn));
        Assert.Empty(error.TakenAsExact);
    }

    // Errors that go together cancel in a ratio of equal parts: load² over mass⁴ has 2 × 2.864 % less 4 × 1.432 % left, nothing, where by themselves they make √2 × 5.729 %.
    [Fact]
    public void Ratio_OfInputsThatErrTogether_Cancels()
    {
        var error = Of((set, day) => ((AnyQuantity)set.Load).ToPower(2) / ((AnyQuantity)day.BodyMass!.Value).ToPower(4), "kg^-2", Sign);
        var value = 100.0 * 100 / Math.Pow(80, 4);

        Assert.Equal(0.081019 * value, error.ByThemselves!.Value, Tolerance * 0.081 * value);
        // What is left is of the second order: squares of errors of 5.7 %, a third of a per cent.
        Assert.InRange(error.Together!.Value, 0, 0.01 * error.ByThemselves.Value);
    }

    // The same in a product adds up: 2.864 % + 1.432 % = 4.297 %, where by themselves they make 3.203 %; 4.297/3.203 = 1.342.
    [Fact]
    public void Product_OfInputsThatErrTogether_IsExplainedByIt()
    {
        var error = Of((set, day) => (AnyQuantity)set.Load * day.BodyMass!.Value, "kg²", Sign);

        Assert.Equal(0.0429669 * 8000, error.Together!.Value, Tolerance * 344);
        Assert.Equal(1.342, error.Ratio!.Value, 1.342 * Tolerance);
        Assert.True(error is { IsLarge: true, IsExplained: true });
        Assert.StartsWith("The error seen is larger because the inputs' errors go together and add up", error.Explanation, StringComparison.Ordinal);
    }

    // Power law: 0.67 × 2.86446 % = 1.91919 % of 100^0.67 = 21.8776 (R 4.2.2).
    [Fact]
    public void Power_TakesTheErrorTimesThePower()
    {
        var error = Of((set, _) => ((AnyQuantity)set.Load).ToPower(0.67), "kg^0.67", Apart);

        Assert.Equal(0.0191919 * 21.8776, error.ByThemselves!.Value, Tolerance * 0.42);
        Assert.Null(error.Together);
        Assert.Equal(["load of back squat"], error.Inputs.Select(i => i.Name));
        Assert.Equal(1, error.Inputs[0].Share, 1e-12);
    }

    // Interval of the error by the χ² law with the 39 degrees of freedom of the retest: √(39/58.1201) = 0.81916 and √(39/23.6543) = 1.28404 (tables of χ²).
    [Fact]
    public void Interval_IsThatOfTheInputsError()
    {
        var error = Of((set, _) => set.Load, "kg", Apart);

        Assert.Equal(0.81916, error.ByThemselvesInterval!.Value.Low / error.ByThemselves!.Value, 1e-4);
        Assert.Equal(1.28404, error.ByThemselvesInterval.Value.High / error.ByThemselves.Value, 1e-4);
    }

    // Something else than the inputs moves the value by ±15 % from day to day: the formula knows of no error so large.
    [Fact]
    public void OtherSource_ShowsAsLargeAndNotExplained()
    {
        var error = Of((set, day) => (AnyQuantity)set.Load * day.Of<NumberTrial>().Single().Value, "kg", Apart, i => 1 + 0.15 * (i / 4 % 2 == 0 ? 1 : -1));

        // √(15² + 2.86²)/√2 over 2.86: 3.8 times the error carried, of which half is asked for.
        Assert.True(error.Ratio > 2);
        Assert.True(error is { IsLarge: true, IsExplained: false });
        Assert.Equal("The error seen is larger than its inputs' errors make, so something else adds to it. Else look at who timed, the warm-up and how players do the test from day to day; all input errors are this squad's own.", error.Explanation);
    }

    // One day only: the error of jump height is that of a study, 5.8 % of 41 athletes [souza2020]. Flight time goes with the root of height, so it errs by 2.9 %.
    [Fact]
    public void PublishedErrorsOnly_AreCarriedAndSaidToBeForeign()
    {
        var bench = Benches.Bench([[.. Enumerable.Range(0, 30).Select(i => Days.With(Days.Jump(JumpKind.Countermovement) with { FlightTime = Duration.FromSeconds(0.5) }) with { AthleteId = $"a{i + 1}" })]], retest: false).Beside(MetricCatalogue.All);
        var error = bench.Judge(Sketch.Each<JumpTrial>("flight", "Flight time", "s", Direction.Higher, (0.1, 1), (jump, _) => jump.FlightTime)).Error;

        Assert.Equal(0.029 * 0.5, error.ByThemselves!.Value, Tolerance * 0.0145);
        var input = Assert.Single(error.Inputs);
        Assert.Equal(("height of countermovement jump", 5.8, false, "published error [souza2020]"), (input.Name, Math.Round(input.Percent, 9), input.IsOwn, input.Basis));
        // R 4.2.2: sqrt(40/qchisq(c(.975, .025), 40)).
        Assert.Equal(0.821012894, error.ByThemselvesInterval!.Value.Low / error.ByThemselves.Value, 1e-8);
        Assert.Equal(1.279502828, error.ByThemselvesInterval.Value.High / error.ByThemselves.Value, 1e-8);
        Assert.Equal((null, null, "No error between days was observed to set it against."), (error.Observed, error.Ratio, error.Explanation));
    }

    [Fact]
    public void NoInput_OrOneWithoutError_CarriesNothing()
    {
        var constant = Of((_, _) => Quantities.Mass.FromKilograms(5), "kg", Apart);
        var stature = Of((_, day) => day.Stature, "m", Apart);

        Assert.All([constant, stature], e => Assert.Equal((null, 0, "No error of an input is known, so none can be carried through the formula."), (e.ByThemselves, e.Inputs.Count, e.Explanation)));
        Assert.Empty(constant.TakenAsExact);
        Assert.Equal(["stature"], stature.TakenAsExact);
    }

    [Fact]
    public void Film_IsSaidNotToBeCarried()
    {
        var bench = Benches.Bench([[Days.With(Contact.LinearRunner.Trial())]], retest: false);

        Assert.Contains("readings of film", bench.Judge(Sketch.Day("own_idea", "Own idea", "s", Direction.Lower, (0, 5), day => day.Value("contact_time"))).Error.TakenAsExact);
    }

    // A formula that never ends on other loads than those of the day is left behind, and the rest of the card stands.
    [Fact]
    public void FormulaThatNeverEndsOnOtherInputs_IsLeftBehind()
    {
        using var end = new ManualResetEventSlim();
        var bench = Bench(Apart, null);
        var loads = bench.Days.SelectMany(d => d).SelectMany(d => d.Of<LiftSet>()).Select(s => s.Load).ToHashSet();
        var card = bench.Judge(Sketch.Each<LiftSet>("own_idea", "Own idea", "kg", Direction.Higher, (1, 500), (set, _) =>
        {
            if (!loads.Contains(set.Load)) end.Wait();
            return set.Load;
        }) with { Limits = new(TimeSpan.FromMilliseconds(200), 3) });

        Assert.Equal("The formula takes too long to be asked again with other inputs, so no error was carried through it.", card.Error.Explanation);
        Assert.Equal(RepeatKind.RetestDays, card.Repeats.Kind);
        Assert.Empty(card.Sketch.Troubles);
        end.Set();
    }

    private static PropagatedError Of(Func<LiftSet, AthleteDay, AnyQuantity?> formula, string unit, Func<int, int> other, Func<int, double>? more = null)
        => Bench(other, more).Judge(Sketch.Each("own_idea", "Own idea", unit, Direction.Higher, (1e-9, 1e9), formula)).Error;

    // Half of the difference on each day, in logarithms, so that the mean of both days is 100 kg and 80 kg for everybody.
    private static BenchSquad Bench(Func<int, int> other, Func<int, double>? more)
    {
        IReadOnlyList<AthleteDay> Day(DateOnly date, double half) => [.. Enumerable.Range(0, Players).Select(i =>
        {
            var mass = Quantities.Mass.FromKilograms(80 * Math.Exp(half * 0.02 * other(i)));
            return Days.With(Days.Lift("back_squat", 100 * Math.Exp(half * 0.04 * Sign(i)), 1), new BodyMeasure { AthleteId = "", Date = date, BodyMass = mass }, Invented.Number(half > 0 && more is not null ? more(i) : 1))
                with { AthleteId = $"a{i + 1}", Date = date, BodyMass = mass, BodyMassDate = date };
        })];
        return Benches.Bench([Day(Course.Baseline, -0.5), Day(Course.Retest, 0.5)], retest: true).Beside(MetricCatalogue.All);
    }
}

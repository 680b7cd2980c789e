using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Document;
using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Rates;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

/// <summary>Where theory gives the rate the simulation must meet it; where a method is known to be wrong the simulation must find it out.</summary>
public class ClosedFormTests
{
    /// <summary>4 standard errors, as for a single look; a few hundred looks pass it with 98 %, and the seed is fixed.</summary>
    private const double Far = 4;

    private static readonly Lazy<GridStudy> s_nineDegrees = new(() => GridStudy.Run([], [new BeyondErrorVerdict()], [], 10_000, 3, 2, only: c => c == "df 9, SWC 0.5 TE, 1 before, normal"));

    [Fact]
    public void EveryEntry_CasesWithAClosedForm_AgreeWithIt()
    {
        var study = GridStudy.Run(Registry.Intervals, Registry.Verdicts, Registry.Rates, 300, 11, 2, only: Some);
        var distances = ClosedForms.Distances(study);
        Assert.True(distances.Count > 100, $"{distances.Count} cases only");
        Assert.All(distances, d => Assert.True(Math.Abs(d.Errors) < Far, $"{d.Case}: {d.Errors} standard errors off"));
    }

    // R: 2*pt(-qnorm(.975), nu).
    [Theory]
    [InlineData("df 5", 0.1072928977)]
    [InlineData("df 9", 0.08164913173)]
    [InlineData("df 19", 0.0648334771)]
    public void NormalMultiplier_FewDegreesOfFreedom_FlagsTooManyAsComputedElsewhere(string label, double rate)
    {
        var count = Rate<NormalMultiplierFlag>(label, 20_000);
        Assert.InRange(count.ErrorsFrom(rate), -Far, Far);
        // It does not flag the 5 % it states: a simulation that could not tell Student from normal would pass both.
        Assert.True(count.ErrorsFrom(0.05) > 2 * Far);
    }

    // 1 - 2 P(T <= -z) for 9 degrees of freedom, R; Student's interval covers 0.95.
    [Fact]
    public void ChangeInterval_TenAthletes_StudentCoversAndTheNormalMultiplierIsFoundWrong()
    {
        var study = GridStudy.Run([new ChangeInterval(), new NormalMultiplierChangeInterval()], [], [], 20_000, 3, 2,
            only: c => c == "10 athletes, 2 trials, ICC 0.90, normal");
        var student = study.Intervals.Single(r => r.Entry is ChangeInterval).Covered;
        var normal = study.Intervals.Single(r => r.Entry is NormalMultiplierChangeInterval).Covered;
        Assert.InRange(student.ErrorsFrom(0.95), -Far, Far);
        Assert.InRange(normal.ErrorsFrom(1 - 0.08164913173), -Far, Far);
        Assert.True(normal.ErrorsFrom(0.95) < -2 * Far);
        Assert.True(student.ErrorsFrom(1 - 0.08164913173) > 2 * Far);
    }

    // R, one numerical integral each: rate of |change| > sqrt(2) t(.975, 9) TE for a true change of 1, 3 and 5 TE.
    [Theory]
    [InlineData(0, 0.05)]
    [InlineData(1, 0.0972521317)]
    [InlineData(3, 0.473861532)]
    [InlineData(5, 0.881067179)]
    public void BeyondError_NineDegrees_ClearsAsComputedElsewhere(double change, double rate)
    {
        var result = s_nineDegrees.Value.Verdicts.Single(r => r.TrueChange == change);
        Assert.InRange((result.Clear - rate) / Math.Sqrt(rate * (1 - rate) / result.Draws), -Far, Far);
    }

    // R: pchisq(nu * (qnorm(.95)/qnorm(.975))^2, nu).
    [Theory]
    [InlineData("df 5", 0.379864)]
    [InlineData("df 19", 0.181531)]
    public void UnluckyRetest_IsAsFrequentAsComputedElsewhere(string label, double rate)
        => Assert.InRange(Rate<UnluckyRetest>(label, 20_000).ErrorsFrom(rate), -Far, Far);

    // 2 Phi(-(SWC/TE)/sqrt 2), SWC 0.2 of the true SD, R.
    [Theory]
    [InlineData("ICC 0.50", 0.88753708)]
    [InlineData("ICC 0.90", 0.67137324)]
    [InlineData("ICC 0.99", 0.15939041)]
    public void PointBeyondWorthwhile_IsAsFrequentAsComputedElsewhere(string label, double rate)
        => Assert.InRange(Rate<PointBeyondWorthwhile>(label, 20_000).ErrorsFrom(rate), -Far, Far);

    // 1 - Phi((SWC - change)/(sqrt 2 TE) + z_c), SWC half a TE, R.
    [Theory]
    [InlineData("c 0.75, unchanged", 0.15196477)]
    [InlineData("c 0.95, unchanged", 0.022836276)]
    [InlineData("c 0.9, changed by the worthwhile amount", 0.1)]
    public void FlatPriorFlag_IsAsFrequentAsComputedElsewhere(string label, double rate)
        => Assert.InRange(Rate<FlatPriorFlag>(label, 20_000).ErrorsFrom(rate), -Far, Far);

    // 1 - .95^m.
    [Theory]
    [InlineData("10 athletes", 0.4012630608)]
    [InlineData("50 athletes", 0.9230550247)]
    public void SquadFlag_IsAsFrequentAsComputedElsewhere(string label, double rate)
        => Assert.InRange(Rate<SquadFlag>(label, 4_000).ErrorsFrom(rate), -Far, Far);

    private static RateCount Rate<T>(string label, int draws) where T : RateUnderTest, new()
        => GridStudy.Run([], [], [new T()], draws, 3, 2, only: c => c == label).Rates.Single().Count;

    // Small squads, two and three trials: where methods go wrong first.
    private static bool Some(string label) => !label.Contains("60 ", StringComparison.Ordinal) && !label.Contains("5 trials", StringComparison.Ordinal)
        && !label.Contains("0.70", StringComparison.Ordinal) && !label.Contains("0.80", StringComparison.Ordinal) && !label.Contains("0.95", StringComparison.Ordinal);
}

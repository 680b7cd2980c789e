using Analytics.Statistics.Change;
using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Change;

/// <summary>
/// The rates the rules state against seeded simulation: error estimated from a retest of its own, then one athlete judged.
/// A measured rate must lie within 4 standard errors of the closed form (a correct rule fails that once in 16 000 runs; the seed is fixed).
/// </summary>
public class VerdictSimulationTests
{
    private const int Runs = 40_000;

    [Theory]
    [InlineData(6, 0.0)]
    [InlineData(10, 0.0)]
    [InlineData(20, 0.0)]
    [InlineData(10, 0.5)]
    [InlineData(10, 3.0)]
    public void BeyondErrorRule_UnchangedAthlete_IsWrongAtItsStatedRate(int retested, double worthwhile)
    {
        var stated = BeyondErrorRule.Standard.ClearRate(0, worthwhile, retested - 1);
        Assert.True(stated <= BeyondErrorRule.Standard.LargestFalseFlagRate + 1e-9);
        WithinFourErrors(stated, ClearRate(BeyondErrorRule.Standard, 0, worthwhile, retested));
    }

    [Theory]
    [InlineData(2.0)]
    [InlineData(4.0)]
    public void BeyondErrorRule_TrueChange_IsSeenAtItsStatedRate(double trueChange)
        => WithinFourErrors(BeyondErrorRule.Standard.ClearRate(trueChange, 0.5, 9), ClearRate(BeyondErrorRule.Standard, trueChange, 0.5, 10));

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(4.0)]
    public void BeyondWorthwhileRule_AnyChange_IsClearAtItsStatedRate(double trueChange)
    {
        var rule = new BeyondWorthwhileRule { Level = 0.95 };
        WithinFourErrors(rule.ClearRate(trueChange, 1, 9), ClearRate(rule, trueChange, 1, 10));
    }

    // Reliability .90, smallest worthwhile change 0.2 SD: two in three unchanged athletes pass it. Closed form 0.65472 (R).
    [Fact]
    public void PointBeyondWorthwhile_ReliabilityNinety_IsWrongTwoTimesInThree()
    {
        var random = new Gaussian(20260302);
        const double Error = 0.31622776601683794; // SD 1, ICC .90
        var flagged = 0;
        for (var i = 0; i < Runs; i++)
        {
            if (Math.Abs(Error * (random.Next() - random.Next())) > 0.2) flagged++;
        }

        WithinFourErrors(0.65472085, flagged / (double)Runs);
    }

    // The interval of a change covers the truth in 95 % whatever the number retested; with the normal multiplier it would not.
    [Theory]
    [InlineData(6)]
    [InlineData(20)]
    public void Interval_TrueChange_CoversNinetyFivePercent(int retested)
    {
        var random = new Gaussian(31 + retested);
        var covered = 0;
        for (var i = 0; i < Runs; i++)
        {
            if (Judged(random, 2.5, retested).Interval().Contains(2.5)) covered++;
        }

        WithinFourErrors(0.95, covered / (double)Runs);
    }

    [Fact]
    public void TypicalErrorInterval_ThreeTrials_CoversNinetyFivePercent()
    {
        var random = new Gaussian(77);
        int covered = 0, runs = 10_000;
        for (var i = 0; i < runs; i++)
        {
            var rows = Enumerable.Range(0, 8).Select(_ =>
            {
                var level = 50 + 5 * random.Next();
                return (IReadOnlyList<double?>)[level + random.Next(), level + 0.5 + random.Next(), level + 1 + random.Next()];
            }).ToList();
            if (TypicalErrors.FromTrials(TrialTable.FromRows(rows)).Interval().Contains(1)) covered++;
        }

        WithinFourErrors(0.95, covered / (double)runs, runs);
    }

    private static double ClearRate(VerdictRule rule, double trueChange, double worthwhile, int retested)
    {
        var random = new Gaussian(1000 * retested + (int)(10 * trueChange) + (int)(100 * worthwhile));
        var clear = 0;
        for (var i = 0; i < Runs; i++)
        {
            if (rule.Judge(Judged(random, trueChange, retested), worthwhile > 0 ? worthwhile : null).IsClear()) clear++;
        }

        return clear / (double)Runs;
    }

    /// <summary>One athlete's change, judged by a typical error from its own retest of unchanged athletes; true error 1.</summary>
    private static IndividualChange Judged(Gaussian random, double trueChange, int retested)
    {
        double sum = 0, squares = 0;
        for (var i = 0; i < retested; i++)
        {
            var d = random.Next() - random.Next();
            sum += d;
            squares += d * d;
        }

        var error = Math.Sqrt((squares - sum * sum / retested) / (retested - 1) / 2);
        return IndividualChange.Between(50 + random.Next(), 50 + trueChange + random.Next(), error, retested - 1);
    }

    private static void WithinFourErrors(double stated, double measured, int runs = Runs)
    {
        var allowed = 4 * Math.Sqrt(stated * (1 - stated) / runs);
        Assert.True(Math.Abs(measured - stated) <= allowed, FormattableString.Invariant($"stated {stated:F5}, measured {measured:F5}, allowed ± {allowed:F5}"));
    }
}

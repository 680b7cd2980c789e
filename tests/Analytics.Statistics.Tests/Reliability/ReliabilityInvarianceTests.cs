using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

/// <summary>What must not change when the zero, the unit or the order of athletes does; on seeded tables, half of them with gaps.</summary>
public class ReliabilityInvarianceTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Shift_ChangesNoErrorAndNoCorrelation(int seed)
    {
        var table = Random(seed);
        Same(table, table.Select(v => v + 250), 1);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Scale_ScalesErrorAndKeepsCorrelation(int seed)
    {
        var table = Random(seed);
        Same(table, table.Select(v => v * 0.45359237), 0.45359237);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void OrderOfAthletes_ChangesNothing(int seed)
    {
        var table = Random(seed);
        var order = Enumerable.Range(0, table.Athletes).ToArray();
        new Random(seed).Shuffle(order);
        Same(table, TrialTable.FromRows([.. order.Select(i => (IReadOnlyList<double?>)[.. Enumerable.Range(0, table.Trials).Select(j => table[i, j])])]), 1);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void ShiftOfOneTrial_IsNotError(int seed)
    {
        var table = Random(seed);
        var later = TrialTable.FromRows([.. Enumerable.Range(0, table.Athletes).Select(i => (IReadOnlyList<double?>)[.. Enumerable.Range(0, table.Trials).Select(j => table[i, j] + (j == 1 ? 4 : 0))])]);
        Oracle.Close(TypicalErrors.FromTrials(table).Value, TypicalErrors.FromTrials(later).Value, 1e-9);
        Oracle.Close(VarianceComponents.Of(table).Icc, VarianceComponents.Of(later).Icc, 1e-8);
    }

    private static void Same(TrialTable a, TrialTable b, double factor)
    {
        Oracle.Close(factor * TypicalErrors.FromTrials(a).Value, TypicalErrors.FromTrials(b).Value, 1e-9);
        VarianceComponents x = VarianceComponents.Of(a), y = VarianceComponents.Of(b);
        Assert.Equal(x.Icc, y.Icc, 1e-9);
        Assert.Equal(x.Interval.Low, y.Interval.Low, 1e-8);
        Oracle.Close(factor * factor * x.BetweenVariance, y.BetweenVariance, 1e-7);
        Oracle.Close(factor * TrialPair.Of(a, 0, 1).Change.Value, TrialPair.Of(b, 0, 1).Change.Value, 1e-8);
        Assert.Equal(ErrorGrowth.Of(a).RankCorrelation!.Value, ErrorGrowth.Of(b).RankCorrelation!.Value, 1e-9);
        foreach (var form in Enum.GetValues<IccForm>())
            Assert.Equal(IntraclassCorrelation.Of(a, form).Value, IntraclassCorrelation.Of(b, form).Value, 1e-9);
    }

    private static TrialTable Random(int seed)
    {
        var normal = new Gaussian(seed);
        var gaps = new Random(seed);
        return TrialTable.FromRows([.. Enumerable.Range(0, 10 + seed).Select(_ =>
        {
            var level = 40 + 4 * normal.Next();
            return (IReadOnlyList<double?>)[.. Enumerable.Range(0, 3).Select(_ => seed % 2 == 0 && gaps.NextDouble() < 0.15 ? (double?)null : level + normal.Next())];
        })]);
    }
}

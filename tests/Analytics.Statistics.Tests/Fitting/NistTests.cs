using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

/// <summary>The engine against certified results, from both starts.</summary>
public class NistTests
{
    public static TheoryData<string, int> Starts
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var set in NistSet.Names)
                for (var start = 1; start <= 2; start++) data.Add(set, start);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Fit_CertifiedSet_AgreesInEightDigits(string name, int start)
    {
        var set = new NistSet(name);
        var fit = set.Fit(set.Start(start));

        // 11 digits are certified. The parameters follow from the residuals to about 1e-10; eight digits leave room for other processors.
        Assert.True(fit.IsSolution, fit.Ending.InWords());
        Assert.Equal(set.Whole["dof"], fit.DegreesOfFreedom);
        Assert.Equal(0, (fit.Rss!.Value / set.Whole["certified_rss"]) - 1, 1e-10);
        Assert.Equal(0, (fit.ResidualSd!.Value / set.Whole["certified_residual_sd"]) - 1, 1e-10);
        for (var j = 0; j < set.Parameters.Count; j++)
        {
            Assert.Equal(0, (fit.Parameters[j] / set.Parameters[j]["certified_value"]) - 1, 1e-8);
            Assert.Equal(0, (fit.StandardErrors![j] / set.Parameters[j]["certified_sd"]) - 1, 1e-8);
        }
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Fit_RowsInAnotherOrder_SameSolution(string name, int start)
    {
        var set = new NistSet(name);
        var order = Enumerable.Range(0, set.X.Length).ToArray();
        new Random(20260301).Shuffle(order);
        var plain = set.Fit(set.Start(start));
        var shuffled = set.Fit([.. order.Select(i => set.X[i])], [.. order.Select(i => set.Y[i])], set.Start(start));
        Assert.True(shuffled.IsSolution, shuffled.Ending.InWords());
        Assert.All(plain.Parameters.Zip(shuffled.Parameters), p => Oracle.Close(p.First, p.Second, 1e-8));
        Assert.All(plain.StandardErrors!.Zip(shuffled.StandardErrors!), p => Oracle.Close(p.First, p.Second, 1e-8));
        Assert.All(order.Select((from, to) => (plain.Residuals[from], shuffled.Residuals[to])), r => Assert.Equal(r.Item1, r.Item2, 1e-8 * plain.ResidualSd!.Value * 100));
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Fit_YInAnotherUnit_ScalesWithIt(string name, int start)
    {
        // The first parameter of these models multiplies the curve; of Hahn1 the first four do, and Chwirut2 divides by its last two.
        var set = new NistSet(name);
        var plain = set.Fit(set.Start(start));
        foreach (var unit in (double[])[1e-9, 0.45359237, 1e9])
        {
            var by = Enumerable.Range(0, plain.Parameters.Count)
                .Select(j => name switch { "Hahn1" => j < 4, "Chwirut2" => j > 0, _ => j == 0 } ? (name == "Chwirut2" ? 1 / unit : unit) : 1).ToArray();
            var scaled = set.Fit(set.X, [.. set.Y.Select(y => y * unit)], [.. set.Start(start).Zip(by, (s, b) => s * b)]);
            Assert.True(scaled.IsSolution, scaled.Ending.InWords());
            for (var j = 0; j < by.Length; j++)
            {
                Oracle.Close(plain.Parameters[j] * by[j], scaled.Parameters[j], 1e-8);
                Oracle.Close(plain.StandardErrors![j] * by[j], scaled.StandardErrors![j], 1e-8);
            }
            Oracle.Close(plain.Condition!.Value, scaled.Condition!.Value, 1e-6);
        }
    }

    [Theory]
    [MemberData(nameof(Starts))]
    public void Derivatives_BelongToTheModels(string name, int start)
    {
        var set = new NistSet(name);
        Assert.True(set.CheckDerivatives(set.Start(start)).Agrees, set.CheckDerivatives(set.Start(start)).ToString());
        Assert.True(set.CheckDerivatives(set.Solution).Agrees, set.CheckDerivatives(set.Solution).ToString());
    }
}

using Analytics.Statistics.Fitting;
using Analytics.Metrics.Tests;

namespace Analytics.Statistics.Tests.Fitting;

/// <summary>Certified results of the NIST Statistical Reference Datasets (StRD), non-linear regression; data and values in tests/oracles/nist.</summary>
public class NistTests
{
    // Misra1b and following share Misra1a's points but not its model.
    [Theory]
    [InlineData("Misra1a", 1)]
    [InlineData("Misra1a", 2)]
    [InlineData("Misra1b", 1)]
    [InlineData("Misra1b", 2)]
    [InlineData("Misra1c", 1)]
    [InlineData("Misra1c", 2)]
    [InlineData("Misra1d", 1)]
    [InlineData("Misra1d", 2)]
    [InlineData("BoxBOD", 1)]
    [InlineData("BoxBOD", 2)]
    [InlineData("Chwirut2", 1)]
    [InlineData("Chwirut2", 2)]
    [InlineData("DanWood", 1)]
    [InlineData("DanWood", 2)]
    [InlineData("MGH09", 1)]
    [InlineData("MGH09", 2)]
    [InlineData("Hahn1", 1)]
    [InlineData("Hahn1", 2)]
    [InlineData("Eckerle4", 1)]
    [InlineData("Eckerle4", 2)]
    public void Fit_CertifiedSet_AgreesInEightDigits(string set, int start)
    {
        var certified = OracleTable.Read("nist/certified.csv").Where(r => r.Text("dataset") == set).ToArray();
        var parameters = certified.Where(r => r.Text("parameter") != "_fit").ToArray();
        var whole = certified.Single(r => r.Text("parameter") == "_fit");

        var fit = Fit(set, [.. parameters.Select(r => r[$"start{start}"])]);

        // 11 digits are certified. The parameters follow from the residuals to about 1e-10; eight digits leave room for other processors.
        Assert.True(fit.IsSolution, fit.Ending.InWords());
        Assert.Equal(whole["dof"], fit.DegreesOfFreedom);
        Assert.Equal(0, (fit.Rss!.Value / whole["certified_rss"]) - 1, 1e-10);
        Assert.Equal(0, (fit.ResidualSd!.Value / whole["certified_residual_sd"]) - 1, 1e-10);
        for (var j = 0; j < parameters.Length; j++)
        {
            Assert.Equal(0, (fit.Parameters[j] / parameters[j]["certified_value"]) - 1, 1e-8);
            Assert.Equal(0, (fit.StandardErrors![j] / parameters[j]["certified_sd"]) - 1, 1e-8);
        }
    }

    private static NonlinearFit Fit(string set, double[] start)
    {
        var rows = OracleTable.Read($"nist/{set.ToLowerInvariant()}.csv");
        double[] x = [.. rows.Select(r => r["x"])], y = [.. rows.Select(r => r["y"])];
        return set switch
        {
            "Misra1a" or "BoxBOD" => LevenbergMarquardt.Fit(new Misra1a(), x, y, start),
            "Misra1b" => LevenbergMarquardt.Fit(new Misra1b(), x, y, start),
            "Misra1c" => LevenbergMarquardt.Fit(new Misra1c(), x, y, start),
            "Misra1d" => LevenbergMarquardt.Fit(new Misra1d(), x, y, start),
            "Chwirut2" => LevenbergMarquardt.Fit(new Chwirut2(), x, y, start),
            "DanWood" => LevenbergMarquardt.Fit(new DanWood(), x, y, start),
            "MGH09" => LevenbergMarquardt.Fit(new Mgh09(), x, y, start),
            "Eckerle4" => LevenbergMarquardt.Fit(new Eckerle4(), x, y, start),
            "Hahn1" => LevenbergMarquardt.Fit(new Hahn1(), x, y, start),
            _ => throw new ArgumentOutOfRangeException(nameof(set), set, "No such set."),
        };
    }
}

using Analytics.Statistics.Reliability;

namespace Analytics.Statistics.Tests.Reliability;

public class ErrorGrowthTests
{
    // R: cor.test(method = "spearman", exact = FALSE).
    [Fact]
    public void Of_Tables_AgreesWithR()
    {
        var three = ErrorGrowth.Of(ReliabilityTables.Of("retest3"));
        Oracle.Close(PeerOracle.Value("growth_retest3", "rho"), three.RankCorrelation!.Value, 1e-12);
        Oracle.Close(PeerOracle.Value("growth_retest3", "p"), three.P!.Value, 1e-10);
        Oracle.Close(PeerOracle.Value("growth_retest3_log", "rho"), three.LogRankCorrelation!.Value, 1e-12);
        Oracle.Close(PeerOracle.Value("growth_retest3_log", "p"), three.LogP!.Value, 1e-10);
        Assert.Equal(ErrorAdvice.KeepUnits, three.Advice);
        Oracle.Close(PeerOracle.Value("growth_weir_A", "rho"), ErrorGrowth.Of(ReliabilityTables.Of("weir_A")).RankCorrelation!.Value, 1e-12);
    }

    [Fact]
    public void Of_ErrorAsAShare_AdvisesLogs()
    {
        var growth = ErrorGrowth.Of(Made((level, e) => level * Math.Exp(0.05 * e)));
        Assert.Equal(ErrorAdvice.UseLogs, growth.Advice);
        Assert.True(growth.RankCorrelation > 0.3 && growth.LogGain > 2);
        Assert.Contains("analyse logarithms", growth.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_ConstantError_AdvisesUnits() => Assert.Equal(ErrorAdvice.KeepUnits, ErrorGrowth.Of(Made((level, e) => level + e)).Advice);

    [Fact]
    public void Of_GrowingErrorBelowZero_SaysLogsNeedValuesAboveZero()
    {
        var growth = ErrorGrowth.Of(Made((level, e) => level * (1 + 0.05 * e) - 100));
        Assert.Equal(ErrorAdvice.NeitherFits, growth.Advice);
        Assert.Contains("logarithms need values above 0", growth.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FallingError_SaysLogsDoNotCureIt()
        => Assert.Contains("logarithms do not cure it", ErrorGrowth.Of(Made((level, e) => level + 80 / level * e)).Words, StringComparison.Ordinal);

    [Fact]
    public void Of_FewAthletes_AdvisesNothing()
        => Assert.Contains("8 athletes have a repeat; below 10 nothing is advised", ErrorGrowth.Of(ReliabilityTables.Of("weir_A")).Words, StringComparison.Ordinal);

    [Fact]
    public void Of_ExactRepeats_CannotTell()
        => Assert.Equal(ErrorAdvice.CannotTell, ErrorGrowth.Of(TrialTable.FromRows([.. Enumerable.Range(1, 12).Select(i => (IReadOnlyList<double?>)[i, i])])).Advice);

    [Fact]
    public void Of_TwoRepeats_Throws()
        => Assert.Contains("2 of 3 athletes have a repeat", Assert.Throws<ArgumentException>(() => ErrorGrowth.Of(TrialTable.FromPairs([1, 2, 3], [1, 3, null]))).Message, StringComparison.Ordinal);

    private static TrialTable Made(Func<double, double, double> test)
    {
        var normal = new Gaussian(8);
        return TrialTable.FromRows([.. Enumerable.Range(0, 60).Select(i => (IReadOnlyList<double?>)[test(20 + 3 * i, normal.Next()), test(20 + 3 * i, normal.Next())])]);
    }
}

using Analytics.Metrics.Sprinting.Fits;
using Analytics.Statistics.Fitting;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

/// <summary>The derivatives of the split models are those of their curves, over the range of people and starts.</summary>
public class SplitModelDerivativesTests
{
    public static TheoryData<StartModel, double, double> Runs
    {
        get
        {
            var runs = new TheoryData<StartModel, double, double>();
            foreach (var start in Enum.GetValues<StartModel>())
                foreach (var (speed, tau) in new[] { (6.0, 0.8), (9.0, 1.2), (12.0, 1.6) }) runs.Add(start, speed, tau);
            return runs;
        }
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void Times(StartModel start, double speed, double tau)
    {
        var check = JacobianCheck.Of(new SplitTimeModel(start), [2, 5, 10, 20, 40], Parameters(start, speed, tau));
        Assert.True(check.Agrees, check.ToString());
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void Distances(StartModel start, double speed, double tau)
    {
        var check = JacobianCheck.Of(new SplitDistanceModel(start), [0.8, 1.5, 3, 5], Parameters(start, speed, tau));
        Assert.True(check.Agrees, check.ToString());
    }

    private static double[] Parameters(StartModel start, double speed, double tau) =>
    [
        speed, tau,
        .. start.HasOffset() ? [0.15] : Array.Empty<double>(),
        .. start.HasRunIn() ? [0.3] : Array.Empty<double>(),
    ];
}

using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using static Analytics.Metrics.Tests.Profile.Invented;

namespace Analytics.Metrics.Tests.Profile;

/// <summary>Probability that the true value is worse than a target that is fixed.</summary>
public class FixedTargetTests
{
    private static readonly PublishedError s_one = new(null, 1, "key");

    private static AthleteStanding Of(string id, PublishedError? published, Direction better, params double[] values)
        => new SquadProfile { Squad = Squad(values.Length) }.Standing(Metric(better: better, published: published), Days(March, values)).For(id)!;

    // Weight w = 465.666667/466.666667 = 0.997857; best guess 40 − 10 w = 30.021429. Error √(w + (1 − w)² · 466.666667/7) = √(0.997857 + 0.000306) = 0.999081.
    // Target 31: t = 0.978571/0.999081 = 0.979471, 6 degrees of freedom; R: pt(0.979471, 6) = 0.817413.
    [Fact]
    public void ProbabilityWorseThan_AsByHand()
    {
        var a3 = Of("a3", s_one, Direction.Higher, 10, 20, 30, 40, 50, 60, 70);
        Assert.Equal(30.021429, a3.LikelyValue!.Value, 5);
        Assert.Equal(0.999081, a3.LikelyValueError!.Value, 5);
        Assert.Equal(6, a3.DegreesOfFreedom);
        Assert.Equal(0.817413, a3.ProbabilityWorseThan(31)!.Value, 5);
        Assert.Equal(0.5, a3.ProbabilityWorseThan(a3.LikelyValue.Value)!.Value, 9);
    }

    // The same numbers where lower is better: 31 is now worse than what he likely is, so the probability is the rest to 1.
    [Fact]
    public void ProbabilityWorseThan_LowerIsBetter_Turns()
    {
        var a3 = Of("a3", s_one, Direction.Lower, 10, 20, 30, 40, 50, 60, 70);
        Assert.Equal(30.021429, a3.LikelyValue!.Value, 5);
        Assert.Equal(1 - 0.817413, a3.ProbabilityWorseThan(31)!.Value, 5);
    }

    // Many players make the middle well known: then the distance to it and to the same figure as a fixed target are the same question. 2000 players give a
    // middle with error 20/√2000 = 0.45 beside a test error of 10.
    [Fact]
    public void ProbabilityWorseThan_MiddleWellKnown_AgreesWithProbabilityBehind()
    {
        var values = Enumerable.Range(0, 2000).Select(i => 100 + 34.6 * (i / 1999.0 * 2 - 1)).ToArray();
        var standing = new SquadProfile { Squad = Squad(2000) }.Standing(Metric(published: new(null, 10, "key")), Days(March, values));
        foreach (var a in standing.Athletes.Where((_, i) => i % 97 == 0))
            Assert.Equal(a.ProbabilityBehind!.Value, a.ProbabilityWorseThan(a.Middle - standing.Margin.Value!.Value)!.Value, 2);
    }

    [Fact]
    public void ProbabilityWorseThan_NothingToGoBy_IsNotStated()
    {
        Assert.Null(Of("a1", null, Direction.Higher, 10, 20, 30, 40, 50, 60, 70).ProbabilityWorseThan(31));
        Assert.Null(Of("a1", s_one, Direction.Neither, 10, 20, 30, 40, 50, 60, 70).ProbabilityWorseThan(31));
        Assert.Null(Of("a1", s_one, Direction.Higher, 10, 20, 30).ProbabilityWorseThan(31));
    }

    [Fact]
    public void ProbabilityWorseThan_NoNumber_IsRefused()
        => Assert.Contains("finite", Assert.Throws<ArgumentOutOfRangeException>(() => Of("a1", s_one, Direction.Higher, 10, 20, 30, 40, 50, 60, 70).ProbabilityWorseThan(double.NaN)).Message, StringComparison.Ordinal);

    // 400 squads of 6 groups of 5 with spread 20 and test error 8: those called 80 % or more likely below the fixed target are so as often as stated.
    [Fact]
    public void ProbabilityWorseThan_KnownTruth_IsRightAsOftenAsItSays()
    {
        double stated = 0, right = 0, count = 0, all = 0, below = 0;
        for (var s = 0; s < 400; s++)
        {
            var random = new Random(4100 + s);
            double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            string[] groups = ["A", "B", "C", "D", "E", "F"];
            var means = groups.Select(_ => 100 + 10 * Normal()).ToArray();
            var truth = Enumerable.Range(0, 30).Select(i => means[i % 6] + 20 * Normal()).ToArray();
            var standing = new SquadProfile { Squad = Squad(30, groups) }
                .Standing(Metric(published: new(null, 8, "key")), Days(March, [.. truth.Select(t => t + 8 * Normal())]));
            for (var i = 0; i < 30; i++)
            {
                if (standing.For($"a{i + 1}")!.ProbabilityWorseThan(90) is not { } p) continue;
                (all, below) = (all + p, below + (truth[i] < 90 ? 1 : 0));
                if (p < 0.8) continue;
                (stated, right, count) = (stated + p, right + (truth[i] < 90 ? 1 : 0), count + 1);
            }
        }

        // About 12,000 judged and 3,000 called: 3 standard errors of a share are 1.3 and 1.4 points.
        Assert.InRange(count, 2000, 4000);
        Assert.Equal(right / count, stated / count, 0.014);
        Assert.Equal(below / 12000, all / 12000, 0.013);
    }
}

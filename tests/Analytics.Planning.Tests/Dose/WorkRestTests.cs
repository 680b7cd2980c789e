using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Dose;

/// <summary>12 to 20 times the effort for 5 to 10 s all out [baechle2008, from memory].</summary>
public sealed class WorkRestTests
{
    [Theory]
    [InlineData(12, 72)]
    [InlineData(20, 120)]
    public void SixSeconds(double ratio, double expected) => Assert.Equal(expected, WorkRest.RestFor(Duration.FromSeconds(6), ratio).Seconds, 9);

    [Theory]
    [InlineData(71, false)]
    [InlineData(72, true)]
    [InlineData(180, true)] // longer than 120 is no fault
    public void Scheme_RestIsHeldAgainstTheLeast(double rest, bool expected)
        => Assert.Equal(expected, WorkRest.Of(Made.Sprint, Made.Sets(6, 1) with { Rest = Duration.FromSeconds(rest) })!.IsEnough);

    // On the minute and a half: 90 − 6 = 84 s.
    [Fact]
    public void OnTheMinute_RestIsWhatIsLeft()
        => Assert.Equal(84, WorkRest.Of(Made.Sprint, Made.Sets(6, 1) with { Kind = SchemeKind.OnTheMinute, Interval = Duration.FromSeconds(90) })!.Rest.Seconds, 9);

    [Fact]
    public void Cluster_TheShortRestIsJudged()
        => Assert.False(WorkRest.Of(Made.Sprint, Made.Sets(3, 2) with { Kind = SchemeKind.Cluster, InnerRest = Duration.FromSeconds(30), Rest = Duration.FromMinutes(5) })!.IsEnough);

    // Two in a row are 12 s of work.
    [Fact]
    public void LongerEfforts_AreNotJudged()
    {
        var check = WorkRest.Of(Made.Sprint, Made.Sets(3, 2))!;
        Assert.Null(check.IsEnough);
        Assert.Null(check.Most);
    }

    [Fact]
    public void OtherPatterns_AreNoSprint() => Assert.Null(WorkRest.Of(Made.Sprint with { Pattern = MovementPattern.Jump }, Made.Sets(3, 2)));
}

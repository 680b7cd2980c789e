using System.Globalization;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Checks;

/// <summary>Gates at yards where the head says metres, and the other way.</summary>
public sealed class GateUnitsTests
{
    /// <summary>Six athletes; time at a distance by the mono-exponential model x = v (t - tau (1 - exp(-t/tau))), solved by halving.</summary>
    private static double Time(int athlete, double metres)
    {
        double speed = 7.6 + 0.2 * athlete, tau = 1.05, low = 0, high = 20;
        for (var i = 0; i < 60; i++)
        {
            var t = (low + high) / 2;
            if (speed * (t - tau * (1 - Math.Exp(-t / tau))) < metres) low = t;
            else high = t;
        }

        return low;
    }

    private static string Runs(string unit, double metresPerUnit, double pace = 1, string more = "")
        => $"athlete_id,attempt,t_5{unit}_s,t_10{unit}_s,t_20{unit}_s,t_40{unit}_s{(more.Length > 0 ? ",checked" : "")}\n"
           + string.Concat(Enumerable.Range(1, 6).Select(a => $"A{a},1,{string.Join(',', new[] { 5, 10, 20, 40 }.Select(d => (pace * Time(a, d * metresPerUnit)).ToString("0.00", CultureInfo.InvariantCulture)))}{(more.Length > 0 ? "," + more : "")}\n"));

    private static TemporarySeason Squad() => new TemporarySeason().With("athletes.csv", "athlete_id,name\n" + string.Concat(Enumerable.Range(1, 6).Select(i => $"A{i},Name {i}\n")));

    [Theory]
    [InlineData("m", 0.9144, "yards", "such as t_10yd_s")]
    [InlineData("yd", 1.0, "metres", "such as t_10m_s")]
    public void Read_GatesAtTheOtherUnit_AreHeldBack(string headUnit, double truth, string says, string remedy)
    {
        using var season = Squad().With("testing/2026-02-02/sprints.csv", Runs("yd", 0.9144)).With("testing/2026-03-02/sprints.csv", Runs(headUnit, truth));

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("testing/2026-03-02/sprints.csv", 6), (held.File, held.Rows));
        Assert.Contains($"stood at {says}", held.Reason, StringComparison.Ordinal);
        Assert.Contains(remedy, held.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("m", 1.0, 1.0, "")]
    [InlineData("yd", 0.9144, 0.97, "")]
    [InlineData("yd", 0.9144, 1.03, "")]
    [InlineData("m", 0.9144, 1.0, "yes")]
    public void Read_RightUnitsOrWholeSquadFasterOrChecked_AreKept(string headUnit, double metresPerUnit, double pace, string marked)
    {
        using var season = Squad().With("testing/2026-02-02/sprints.csv", Runs("yd", 0.9144)).With("testing/2026-03-02/sprints.csv", Runs(headUnit, metresPerUnit, pace, marked));

        Assert.Empty(season.Read().HeldBack);
    }

    [Fact]
    public void Read_HandTimes_AreNotComparedWithElectronicOnes()
    {
        using var season = Squad().With("testing/2026-02-02/sprints.csv", Runs("yd", 0.9144))
            .With("testing/2026-03-02/sprints.csv", Runs("m", 0.9144).Replace("attempt,", "attempt,timing,", StringComparison.Ordinal).Replace(",1,", ",1,hand,", StringComparison.Ordinal));

        Assert.Empty(season.Read().HeldBack);
    }
}

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

    [Theory]
    [InlineData(6, 0.94)]
    [InlineData(1, 0.94)]
    [InlineData(4, 0.93)]
    [InlineData(6, 1.06)]
    public void Read_PlayersOfASmallSquadFasterOrSlowerAlikeAtAllGates_AreKept(int players, double pace)
    {
        using var season = Squad().With("testing/2026-02-02/sprints.csv", Runs("m", 1))
            .With("testing/2026-03-02/sprints.csv", Runs("m", 1, a => a <= players ? pace : 1));

        Assert.Empty(season.Read().HeldBack);
    }

    // Paces of the players scatter by 2 % and each gate by 0.01 s, on both days; forty seeds each.
    [Theory]
    [InlineData("gates at yards", 0.9144, 1.0, 34, 40)]
    [InlineData("squad 6 % faster", 1.0, 0.94, 0, 6)]
    [InlineData("squad 3 % faster", 1.0, 0.97, 0, 0)]
    public void Read_ScatteredSquadsOfSix_AreToldApart(string what, double truth, double pace, int fewest, int most)
    {
        var held = 0;
        for (var seed = 1; seed <= 40; seed++)
        {
            var random = new Random(seed);
            double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
            using var season = Squad().With("testing/2026-02-02/sprints.csv", Runs("m", 1, _ => 1, () => 0.01 * Normal()))
                .With("testing/2026-03-02/sprints.csv", Runs("m", truth, _ => pace * (1 + 0.02 * Normal()), () => 0.01 * Normal()));
            if (season.Read().HeldBack.Count > 0) held++;
        }

        Assert.True(held >= fewest && held <= most, $"{what}: {held} of 40 held back");
    }

    [Theory]
    [InlineData("2026-03-02", 1)]
    [InlineData("2029-03-02", 0)] // three years: 9.5 % is within reach
    public void Read_WhatIsImplausibleDependsOnTheTimeBetween(string second, int held)
    {
        using var season = Squad().With("season.json", TemporarySeason.Settings.Replace("2026-07-31", "2029-07-31", StringComparison.Ordinal))
            .With("testing/2026-02-02/sprints.csv", Runs("yd", 0.9144)).With($"testing/{second}/sprints.csv", Runs("m", 0.9144));

        Assert.Equal(held, season.Read().HeldBack.Count);
    }

    private static string Runs(string unit, double metresPerUnit, Func<int, double> pace, Func<double>? noise = null)
        => $"athlete_id,attempt,t_5{unit}_s,t_10{unit}_s,t_20{unit}_s,t_40{unit}_s\n" + string.Concat(Enumerable.Range(1, 6).Select(a =>
        {
            var of = pace(a);
            return $"A{a},1,{string.Join(',', new[] { 5, 10, 20, 40 }.Select(d => (of * Time(a, d * metresPerUnit) + (noise?.Invoke() ?? 0)).ToString("0.00", CultureInfo.InvariantCulture)))}\n";
        }));
}

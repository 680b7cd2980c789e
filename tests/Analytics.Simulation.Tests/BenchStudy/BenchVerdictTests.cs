using Analytics.Metrics.Bench;
using Analytics.Simulation.BenchStudy;
using Analytics.Simulation.BenchStudy.Cases;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Statistics.Distributions;

namespace Analytics.Simulation.Tests.BenchStudy;

/// <summary>
/// The three promises of the bench over 200 squads, each with a sketch of noise, a copy and a new trait, the sketches of docs/bench-study.md in turn: 200 independent
/// yes or no for each promise. Seeds are fixed; the chances below are those of another seed.
/// </summary>
public class BenchVerdictTests
{
    private const int Squads = 200;

    private static readonly Lazy<IReadOnlyList<IReadOnlyList<BenchOutcome>>> s_judged = new(() => BenchStudyRun.Each(Squads, 9000, 2, [0, 1], season =>
    {
        var turn = (int)(season.Seed - 9000);
        return BenchStudyRun.Judge(season, SquadChoice.Whole, [.. new[] { TruthKind.Noise, TruthKind.Copy, TruthKind.New }.Select(k => BenchCases.Required(k)).Select(of => of[turn % of.Count])]);
    }));

    /// <summary>
    /// Wanted 95 %, so 190. By the F law the ICC's interval lies above 0 in 2.5 % of squads of normal noise (a little more when it is skewed): with a rate of 97.3 % another
    /// seed fails in 2 of 100. A rate of 90 % would pass in 1 of 100.
    /// </summary>
    [Fact]
    public void Noise_IsCalledNoise()
    {
        Assert.InRange(BinomialLaw.Cdf(189, Squads, 0.973), 0.01, 0.025);
        Assert.InRange(1 - BinomialLaw.Cdf(189, Squads, 0.90), 0.002, 0.01);
        Assert.InRange(Count(0, v => v == BenchVerdict.Noise), 190, Squads);
        // The document has 1 in some 300; 4 of 200 at that rate in less than 1 of 100.
        Assert.InRange(Count(0, v => v == BenchVerdict.SaysSomethingNew), 0, 3);
    }

    /// <summary>Wanted 95 %, so 190. In the document it is nearly always: with a rate of 99 % another seed fails in less than 1 of 10,000.</summary>
    [Fact]
    public void Copies_AreCalledNothingNew()
    {
        Assert.InRange(BinomialLaw.Cdf(189, Squads, 0.99), 0, 1e-4);
        Assert.InRange(Count(1, v => v == BenchVerdict.NothingNew), 190, Squads);
    }

    /// <summary>Wanted 90 %, so 180. In the document it is nearly always: with a rate of 98 % another seed fails in less than 1 of 10,000; a rate of 80 % would pass in less than 1 of 1,000.</summary>
    [Fact]
    public void NewTraits_AreCalledNeither()
    {
        Assert.InRange(BinomialLaw.Cdf(179, Squads, 0.98), 0, 1e-4);
        Assert.InRange(1 - BinomialLaw.Cdf(179, Squads, 0.80), 0, 1e-3);
        Assert.InRange(Count(2, v => v is not (BenchVerdict.Noise or BenchVerdict.NothingNew or BenchVerdict.NoValues)), 180, Squads);
        // That they are found, too. In the document 91.4 %, so 183 of 200 with a binomial error of 4; five of these below it, 160 and better than half.
        Assert.InRange(Count(2, v => v == BenchVerdict.SaysSomethingNew), 160, Squads);
    }

    private static int Count(int of, Func<BenchVerdict, bool> held)
    {
        Assert.Equal(Squads, s_judged.Value.Count);
        return s_judged.Value.Count(s => held(s[of].Verdict));
    }
}

using Analytics.Simulation.Clips.Study;

namespace Analytics.Simulation.Tests.Clips;

/// <summary>A small clip study; docs/clip-study.md has the large one. Limits are four Monte Carlo errors around the aims of 93 to 97 % and a tenth; an SD of 200 is known to 5 %, so stated and seen errors may differ by 15 % below and, where the frame dominates, 25 % above.</summary>
public class ClipStudyTests
{
    private const int Repetitions = 200;

    public static TheoryData<double, string> Aims
    {
        get
        {
            var data = new TheoryData<double, string>();
            foreach (var rate in new[] { 60.0, 120, 240 })
                foreach (var figure in new[] { "time to contact", "near shin lean at contact", "speed at contact", "momentum at contact" }) data.Add(rate, figure);
            return data;
        }
    }

    private static readonly Dictionary<double, ClipStudy> Studies = ClipCase.All.Take(3).ToDictionary(c => c.RateHertz, c => ClipStudy.Run(c, 7, Repetitions));

    [Theory]
    [MemberData(nameof(Aims))]
    public void Intervals_hold_the_truth_and_figures_are_not_off_to_one_side(double rate, string figure)
    {
        var tally = Studies[rate][figure];
        Assert.True(tally.Missing <= 2);
        Assert.InRange(tally.Coverage, 0.93 - (4 * tally.CoverageError), 1);
        Assert.InRange(tally.StatedError / tally.Sd, 0.85, 1.25);
        Assert.InRange(Math.Abs(tally.BiasShare), 0, 0.1 + (4 * tally.BiasShareError));
    }

    [Fact]
    public void More_frames_know_more()
    {
        foreach (var figure in new[] { "time to contact", "near shin lean at contact", "speed at contact" })
            Assert.True(Studies[240][figure].StatedError < Studies[120][figure].StatedError && Studies[120][figure].StatedError < Studies[60][figure].StatedError, figure);
    }

    [Fact]
    public void A_plane_nobody_told_of_is_a_miss_the_intervals_do_not_know()
    {
        var study = ClipStudy.Run(ClipCase.All.Single(c => !c.OffsetTold), 7, 60);
        // 12/(12 − 0.5) makes every length 4.3 % too long.
        Assert.True(study["speed at contact"].Coverage < 0.8);
        Assert.InRange(study["speed at contact"].Bias, 0.08, 0.16);
    }

    [Fact]
    public void The_same_seed_makes_the_same_page()
    {
        string Page() => ClipStudyDocument.Of([ClipStudy.Run(ClipCase.All[0], 3, 10)], 3, 10);
        Assert.Equal(Page(), Page());
    }
}

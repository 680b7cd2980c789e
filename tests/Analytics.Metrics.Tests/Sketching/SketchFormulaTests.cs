using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Sketching;

public class SketchFormulaTests
{
    private static readonly MetricSketch s_plain = Sketch.Each<ThrowTrial>("idea", "Idea", "m", Direction.Higher, (1, 20),
        (thrown,
            day) => thrown.Distance);

    [Fact]
    public void Formula_NotSaid_IsTheLineOfCode() => Assert.Equal("(thrown, day) => thrown.Distance", s_plain.Metric.Formula);

    [Fact]
    public void Formula_Said_IsTheMetricsAlsoInACopy()
    {
        var said = s_plain with { Formula = "s [m], read off the tape" };
        Assert.Equal("s [m], read off the tape", said.Metric.Formula);
        Assert.Equal("s [m], read off the tape", said.BestOf().Metric.Formula);
    }
}

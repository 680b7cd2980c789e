using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

public class MetricSketchTests
{
    [Fact]
    public void Metric_HasWhatTheSketchSays()
    {
        var sketch = Sketch.Each<LiftSet>("own_idea", "Own idea", "kg/kg^0.67", Direction.Higher, (1, 12), (set, day) => day.BodyMass is { } m
            ? (AnyQuantity)set.Load / ((AnyQuantity)m).ToPower(0.67)
            : null) with
        { Rule = TrialRule.Best, RuleReason = "why", Quality = Quality.MaximalStrength, Meaning = "Strength for size.", Sources = ["oba2014"] };
        var metric = sketch.Metric;

        Assert.Equal(("own_idea", "Own idea", "kg/kg^0.67", Direction.Higher, TrialRule.Best, "why"), (metric.Id, metric.Label, metric.Unit, metric.Better, metric.Rule, metric.RuleReason));
        Assert.Equal((Quality.MaximalStrength, 1.0, 12.0, "Strength for size.", "oba2014", true), (metric.Quality, metric.PlausibleLow, metric.PlausibleHigh, metric.Meaning, metric.Sources.Single(), metric.IsTrial));
        Assert.Equal("(set, day) => day.BodyMass is { } m ? (AnyQuantity)set.Load / ((AnyQuantity)m).ToPower(0.67) : null", metric.Formula);
        Assert.Equal((typeof(LiftSet), null), (sketch.Kind, Sketches.OfDay(_ => null).Kind));
        Assert.Same(metric, sketch.Metric);
        // 180 kg at 90 kg: 180/90^0.67 = 8.829376 (R 4.2.2).
        Assert.Equal(8.829376, sketch.Values(Sketches.Lifted("a1", 180)).Single(), 1e-6);
    }

    [Fact]
    public void Metric_WithoutMeaning_SaysSo() => Assert.Equal("Not said yet.", Sketches.OfDay(_ => null).Metric.Meaning);

    // Three figures of the usual size: 500 kg needs none after the point, 0.5 needs 3, −10 to 10 degrees 5 on average, so 2.
    [Theory]
    [InlineData(0, 1000, 0)]
    [InlineData(0.2, 0.8, 3)]
    [InlineData(1, 12, 2)]
    [InlineData(-10, 10, 1)]
    [InlineData(-6, 6, 2)]
    [InlineData(-0.9, -0.1, 3)]
    [InlineData(1e5, 1e6, 0)]
    [InlineData(1e-12, 2e-12, 6)]
    public void Decimals_NotSaid_ShowThreeFiguresOfTheUsualSize(double low, double high, int decimals)
        => Assert.Equal(decimals, (Sketches.OfDay(_ => null) with { Low = low, High = high }).Metric.Decimals);

    [Fact]
    public void Decimals_Said_AreKept() => Assert.Equal(4, (Sketches.OfDay(_ => null) with { Decimals = 4 }).Metric.Decimals);

    // A property forgotten in the copy would silently fall back to its default.
    [Fact]
    public void Copy_TakesEveryChoiceAlong()
    {
        var sketch = Sketch.Each<LiftSet>("own_idea", "Own idea", "lb", Direction.Lower, (-1, 2), (set, _) => set.Load) with
        {
            Rule = TrialRule.Best, RuleReason = "why", Quality = Quality.Momentum, Decimals = 4, Meaning = "what", Formula = "how", Sources = ["oba2014"], Minutes = 3, Limits = new(TimeSpan.FromSeconds(9), 5),
        };
        var copy = sketch with { };
        var bare = Sketches.OfDay(_ => null);

        foreach (var property in typeof(MetricSketch).GetProperties(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.NonPublic | System.Reflection.BindingFlags.Instance).Where(p => p.SetMethod is not null))
        {
            Assert.Equal(property.GetValue(sketch), property.GetValue(copy));
            if (property.Name is not ("Id" or "Label")) Assert.NotEqual(property.GetValue(bare), property.GetValue(copy));
        }
    }

    [Fact]
    public void Copy_HasARunOfItsOwn()
    {
        var asked = 0;
        var first = Sketches.OfSet((set, _) => { asked++; return set.Load; });
        var day = Sketches.Lifted("a1", 100);
        Assert.Equal([100], first.Values(day));
        var other = first with { Unit = "lb" };

        // 100 kg are 220.462 lb (a pound is 0.45359237 kg).
        Assert.Equal(220.462, other.Values(day).Single(), 1e-3);
        Assert.Equal([100], first.Values(day));
        Assert.Equal(2, asked);
        Assert.NotSame(first.Metric, other.Metric);
        var wrong = first with { Unit = "m" };
        Assert.Empty(wrong.Values(day));
        Assert.Single(wrong.Troubles);
        Assert.Empty(first.Troubles);
    }

    [Fact]
    public void BestAndMean_AreCopiesWithTheirRule()
    {
        var sketch = Sketches.OfSet((set, _) => set.Load) with { RuleReason = "why" };
        var (best, mean, named) = (sketch.BestOf(), sketch.MeanOf(), sketch.BestOf("top_set"));

        Assert.Equal(("own_idea_best", "Own idea, best", TrialRule.Best, ""), (best.Id, best.Label, best.Rule, best.RuleReason));
        Assert.Equal(("own_idea_mean", "Own idea, mean", TrialRule.Mean, ""), (mean.Id, mean.Label, mean.Rule, mean.RuleReason));
        Assert.Equal("top_set", named.Id);
        Assert.Equal("own_idea", sketch.Id);
        Assert.All([best, mean, named], s => Assert.Null(s.Fault));
    }

    [Fact]
    public void Equality_IsOfTheObject()
    {
        var sketch = Sketches.OfDay(_ => null);

        Assert.NotEqual(sketch, sketch with { });
        Assert.Equal(sketch, sketch);
        Assert.Equal(2, new HashSet<MetricSketch> { sketch, sketch with { }, sketch }.Count);
    }
}

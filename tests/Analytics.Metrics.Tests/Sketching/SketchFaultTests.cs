using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

/// <summary>What is wrong with a sketch before its formula is asked.</summary>
public class SketchFaultTests
{
    private static readonly MetricSketch s_good = Sketches.OfSet((set, _) => set.Load);

    [Theory]
    [InlineData("First_step")]
    [InlineData("first step")]
    [InlineData("1st_step")]
    [InlineData("first__step")]
    [InlineData("first_step_")]
    [InlineData("_first")]
    [InlineData("füße")]
    [InlineData("first\n")]
    [InlineData("")]
    public void Fault_FormOfTheIdentifier_SaysWhatIsAllowed(string id)
        => Assert.Equal($"The identifier '{id}' must be lower case letters, digits and single underscores, beginning with a letter, for example first_step_push.", (s_good with { Id = id }).Fault);

    [Fact]
    public void Fault_IdentifierOfALibraryMetric_NamesIt()
        => Assert.Equal("The identifier 'cmj_height' is that of a library metric (Countermovement jump height). Give the sketch another one.", (s_good with { Id = "cmj_height" }).Fault);

    [Fact]
    public void Fault_NoLabel() => Assert.Equal("The sketch 'own_idea' needs a label to be read by.", (s_good with { Label = " " }).Fault);

    [Theory]
    [InlineData(3, 3, "3 to 3")]
    [InlineData(5, 2, "5 to 2")]
    [InlineData(double.NaN, 2, "NaN to 2")]
    [InlineData(0, double.PositiveInfinity, "0 to Infinity")]
    public void Fault_RangeToBeBelieved_SaysWhatIsNeeded(double low, double high, string range)
        => Assert.Equal($"The values to be believed go from {range} kg; two finite numbers are needed, the lower one first.", (s_good with { Low = low, High = high }).Fault);

    [Theory]
    [InlineData(-1.0, "-1")]
    [InlineData(120.5, "120.5")]
    [InlineData(double.NaN, "NaN")]
    public void Fault_Minutes_SayWhatIsAllowed(double minutes, string shown)
        => Assert.Equal($"The minutes per player must be 0 to 120; got {shown}.", (s_good with { Minutes = minutes }).Fault);

    // Nine decimals are all a report can show, and errors take more of them than values.
    [Theory]
    [InlineData(-1)]
    [InlineData(7)]
    public void Fault_Decimals_SayWhatIsAllowed(int decimals)
    {
        Assert.Equal(FormattableString.Invariant($"The decimals shown must be 0 to 6; got {decimals}."), (s_good with { Decimals = decimals }).Fault);
        Assert.All([0, 6], d => Assert.Null((s_good with { Decimals = d }).Fault));
    }

    [Theory]
    [InlineData("stone", "The unit 'stone' cannot be read: 'stone' is not known.")]
    [InlineData("kg/(m", "The unit 'kg/(m' cannot be read: a ')' is missing.")]
    [InlineData("", "The unit '' cannot be read: a unit symbol is missing.")]
    public void Fault_Unit_SaysWhichPart(string unit, string beginning) => Assert.StartsWith(beginning, (s_good with { Unit = unit }).Fault, StringComparison.Ordinal);

    [Fact]
    public void Fault_GoodSketches_HaveNone()
        => Assert.All([s_good, s_good with { Minutes = 0 }, s_good with { Minutes = 120 }, s_good with { Id = "a" }, s_good with { Id = "a1_b2" }, s_good with { Low = -5, High = 0 }], s => Assert.Null(s.Fault));

    // A sketch with a fault stands in a report beside the others: no values, no troubles, nothing thrown.
    [Fact]
    public void Faulty_Sketch_HasNoValuesAndThrowsNothing()
        => Assert.All([s_good with { Unit = "stone" }, s_good with { Id = "cmj_height" }, s_good with { Low = double.NaN }], sketch =>
        {
            Assert.Empty(sketch.Values(Sketches.Lifted("a1", 140)));
            Assert.Empty(sketch.Attempts(Sketches.Lifted("a1", 140)));
            Assert.Empty(sketch.Numbers(Sketches.Lifted("a1", 140)));
            Assert.Empty(sketch.Troubles);
            Assert.False(sketch.IsGivenUp);
        });

    [Fact]
    public void Sketch_ArgumentsMissing_AreRefused()
    {
        Assert.Throws<ArgumentNullException>(() => Sketch.Day("a", "A", "kg", Direction.Higher, (0, 1), null!));
        Assert.Throws<ArgumentNullException>(() => Sketch.Each<LiftSet>("a", "A", "kg", Direction.Higher, (0, 1), null!));
        Assert.Throws<ArgumentNullException>(() => Sketch.Day(null!, "A", "kg", Direction.Higher, (0, 1), _ => (AnyQuantity)1));
        Assert.Throws<ArgumentNullException>(() => Sketch.Day("a", null!, "kg", Direction.Higher, (0, 1), _ => (AnyQuantity)1));
        Assert.Throws<ArgumentNullException>(() => Sketch.Day("a", "A", null!, Direction.Higher, (0, 1), _ => (AnyQuantity)1));
    }
}

using Analytics.Planning.Loads;
using Analytics.Planning.Rooms;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Loads;

// Expected loads are sums done by hand.
public sealed class LoadableWeightsTests
{
    private static readonly WeightStock Pounds = new()
    {
        Bar = Mass.FromPounds(45),
        Plates = [new(Mass.FromPounds(45), 3), new(Mass.FromPounds(25), 1), new(Mass.FromPounds(10), 2), new(Mass.FromPounds(5), 1), new(Mass.FromPounds(2.5), 1)],
        Singles = new Dictionary<string, IReadOnlyList<Mass>> { ["dumbbell"] = [Mass.FromPounds(10), Mass.FromPounds(12.5), Mass.FromPounds(50)] },
    };

    private static readonly WeightStock Kilograms = new()
    {
        Unit = "kg",
        Bar = Mass.FromKilograms(20),
        Plates = [new(Mass.FromKilograms(20), 3), new(Mass.FromKilograms(15), 1), new(Mass.FromKilograms(10), 1), new(Mass.FromKilograms(5), 1), new(Mass.FromKilograms(2.5), 1), new(Mass.FromKilograms(1.25), 1)],
    };

    [Theory]
    [InlineData(317, 315)] // 45 + 6 × 45
    [InlineData(320, 320)]
    [InlineData(319.999, 315)]
    [InlineData(45, 45)]
    [InlineData(1000, 420)] // everything: 45 + 270 + 50 + 40 + 10 + 5
    public void Down_InPounds_IsTheHeaviestNotAbove(double wanted, double expected)
        => Assert.Equal(Mass.FromPounds(expected), LoadableWeights.Of(Pounds, "barbell").Down(Mass.FromPounds(wanted)));

    [Theory]
    [InlineData(102.4, 100)]
    [InlineData(102.5, 102.5)]
    [InlineData(147.49, 145)]
    public void Down_InKilograms_IsTheHeaviestNotAbove(double wanted, double expected)
        => Assert.Equal(Mass.FromKilograms(expected), LoadableWeights.Of(Kilograms, "barbell").Down(Mass.FromKilograms(wanted)));

    // 0.7 × 150 is 105 in decimals and 104.99999999999999 in binary.
    [Fact]
    public void Down_OfAProduct_DoesNotFallAStepLower()
        => Assert.Equal(105, LoadableWeights.Of(Kilograms, "barbell").Down(Mass.FromKilograms(0.7 * 150))!.Value.Kilograms);

    [Fact]
    public void Down_BelowTheBar_IsNothing() => Assert.Null(LoadableWeights.Of(Pounds, "barbell").Down(Mass.FromPounds(44.9)));

    [Fact]
    public void PlatesFor_IsTheFewestHeaviestFirst()
    {
        // 225 = 45 + 2 × (45 + 45).
        Assert.Equal([new PlateCount(Mass.FromPounds(45), 2)], LoadableWeights.Of(Pounds, "barbell").PlatesFor(Mass.FromPounds(225)));
        // 140 = 20 + 2 × 60: three pairs of 20, not 20 + 20 + 15 + 5.
        Assert.Equal([new PlateCount(Mass.FromKilograms(20), 3)], LoadableWeights.Of(Kilograms, "barbell").PlatesFor(Mass.FromKilograms(140)));
        Assert.Empty(LoadableWeights.Of(Pounds, "barbell").PlatesFor(Mass.FromPounds(45))!);
        Assert.Null(LoadableWeights.Of(Pounds, "barbell").PlatesFor(Mass.FromPounds(47)));
    }

    // The heaviest plate first is not always fewest: 30 on a side from 25, 15, 15, 5 is 25 + 5 or 15 + 15; from 25, 15, 2.5 only 15 + 15.
    [Fact]
    public void PlatesFor_WhereTakingTheHeaviestFails_FindsTheOtherWay()
    {
        WeightStock stock = new() { Unit = "kg", Bar = Mass.FromKilograms(20), Plates = [new(Mass.FromKilograms(25), 1), new(Mass.FromKilograms(15), 2), new(Mass.FromKilograms(2.5), 2)] };
        Assert.Equal([new PlateCount(Mass.FromKilograms(15), 2)], LoadableWeights.Of(stock, "barbell").PlatesFor(Mass.FromKilograms(80)));
        var both = stock with { Plates = [.. stock.Plates, new(Mass.FromKilograms(5), 1)] };
        Assert.Equal([new PlateCount(Mass.FromKilograms(25), 1), new PlateCount(Mass.FromKilograms(5), 1)], LoadableWeights.Of(both, "barbell").PlatesFor(Mass.FromKilograms(80)));
    }

    // A 45 lb bar with plates of 20 kg: 45 × 0.45359237 + 40 = 60.41165665 kg.
    [Fact]
    public void MixedUnits_AddUpExactly()
    {
        WeightStock stock = new() { Bar = Mass.FromPounds(45), Plates = [new(Mass.FromKilograms(20), 1)] };
        Assert.Equal([20.41165665, 60.41165665], LoadableWeights.Of(stock, "barbell").All.Select(m => m.Kilograms));
    }

    [Theory]
    [InlineData(30, 12.5)]
    [InlineData(12.5, 12.5)]
    [InlineData(70, 50)]
    public void Singles_NearestNotAbove(double wanted, double expected)
        => Assert.Equal(Mass.FromPounds(expected), LoadableWeights.Of(Pounds, "dumbbell").Down(Mass.FromPounds(wanted)));

    [Fact]
    public void Singles_HaveNoPlates() => Assert.Empty(LoadableWeights.Of(Pounds, "dumbbell").PlatesFor(Mass.FromPounds(50))!);

    [Fact]
    public void NothingListed_IsSaidInWords()
    {
        Assert.Equal("no bar is listed among the weights", LoadableWeights.Of(new(), "barbell").Problem);
        Assert.Empty(LoadableWeights.Of(new(), "barbell").All);
        Assert.Equal("no medicine ball is listed among the weights", LoadableWeights.Of(Pounds, "medicine_ball").Problem);
        var bare = LoadableWeights.Of(new() { Bar = Mass.FromPounds(45) }, "barbell");
        Assert.Equal("no plates are listed among the weights", bare.Problem);
        Assert.Equal([Mass.FromPounds(45)], bare.All);
        Assert.Null(LoadableWeights.Of(Pounds, "barbell").Problem);
    }
}

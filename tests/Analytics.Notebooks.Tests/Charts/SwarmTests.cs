using Analytics.Notebooks.Charts;

namespace Analytics.Notebooks.Tests.Charts;

public sealed class SwarmTests
{
    [Fact]
    public void Offsets_DotsApart_StayOnTheLine() => Assert.Equal([0, 0, 0], Swarm.Offsets([10, 50, 90], 7, 8));

    [Fact]
    public void Offsets_EqualPlaces_MoveApartBothWays()
    {
        var offsets = Swarm.Offsets([50, 50, 50], 7, 8);
        Assert.Equal([-7, 0, 7], offsets.Order().Select(o => Math.Round(o)));
    }

    [Fact]
    public void Offsets_Crowd_StaysWithinReach()
    {
        var offsets = Swarm.Offsets([.. Enumerable.Repeat(50.0, 60)], 7, 8);
        Assert.Equal(60, offsets.Length);
        Assert.All(offsets, o => Assert.InRange(o, -8, 8));
    }

    [Fact]
    public void Offsets_OtherOrder_GivesEachPlaceTheSame()
    {
        double[] places = [12, 15, 11, 40, 42.5, 41, 90];
        var forward = Swarm.Offsets(places, 7, 8);
        var backward = Swarm.Offsets([.. places.Reverse()], 7, 8);
        Assert.Equal(forward, backward.Reverse());
    }
}

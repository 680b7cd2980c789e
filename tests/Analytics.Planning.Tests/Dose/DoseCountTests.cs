using Analytics.Metrics.Strength;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Tests.Dose;

/// <summary>Counts by hand.</summary>
public sealed class DoseCountTests
{
    [Fact]
    public void Contacts_CountBothSidesAndThePartner()
    {
        Assert.Equal(20, DoseCount.Contacts(Made.Jump, Made.Sets(4, 5)));
        Assert.Equal(40, DoseCount.Contacts(Made.Jump with { IsUnilateral = true }, Made.Sets(4, 5)));
        // 3 sets of 2 squats without contacts and 4 jumps each.
        Assert.Equal(12, DoseCount.Contacts(Made.Squat, Made.Sets(3, 2, 85) with { Kind = SchemeKind.Contrast, PartnerRepetitions = 4 }, Made.Jump));
    }

    [Fact]
    public void HardSets_OfARampCountFromTheHeavyPerCentOn()
    {
        // 60, 66.25, 72.5, 78.75, 85 %: one of five.
        Assert.Equal(1, DoseCount.HardSets(Made.Squat, Made.Ramp(5, 3, 60, 85), 80));
        // 70, 75, 80, 85, 90 %: three of five, the one at 80 too.
        Assert.Equal(3, DoseCount.HardSets(Made.Squat, Made.Ramp(5, 3, 70, 90), 80));
    }

    [Fact]
    public void HardSets_ByReserve()
    {
        Assert.Equal(4, DoseCount.HardSets(Made.Squat, Made.Sets(4, 8, 70, reserve: 3), 80));
        Assert.Equal(0, DoseCount.HardSets(Made.Squat, Made.Sets(4, 8, 70, reserve: 4), 80));
        Assert.Equal(4, DoseCount.HardSets(Made.Squat, Made.Sets(4, 12, reserve: 3), 80));
        // The reserve of a ramp is that of its top set.
        Assert.Equal(1, DoseCount.HardSets(Made.Squat, Made.Ramp(4, 8, 50, 70) with { Reserve = 2 }, 80));
    }

    [Fact]
    public void HardSets_OfWhatHasNoLift_AreNone() => Assert.Equal(0, DoseCount.HardSets(Made.Jump, Made.Sets(4, 5, 90, reserve: 1), 80));

    [Fact]
    public void IsHeavy_WithoutPerCent_AsksTheTable()
    {
        // 3 with 1 left: 4 to failure, 90 %; 5 with 3 left: 80 %; 8 with 2 left: 75 % [baechle2008].
        Assert.True(DoseCount.IsHeavy(Made.Squat, Made.Sets(4, 3, reserve: 1), 80));
        Assert.True(DoseCount.IsHeavy(Made.Squat, Made.Sets(4, 5, reserve: 3), 80));
        Assert.False(DoseCount.IsHeavy(Made.Squat, Made.Sets(4, 8, reserve: 2), 80));
        // The weight-room chart has 78 % at 8.
        Assert.False(DoseCount.IsHeavy(Made.Squat, Made.Sets(4, 5, reserve: 3), 80, RepetitionTables.WeightRoom));
        Assert.False(DoseCount.IsHeavy(Made.Squat, Made.Sets(4, 3), 80));
        Assert.False(DoseCount.IsHeavy(Made.Squat with { Basis = LoadBasis.BodyMass }, Made.Sets(4, 3, 90), 80));
    }
}

using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Tests.OnTrial;

public class MarkAndTableTests
{
    [Theory]
    [InlineData("Long jump for size", 40, "Long jump for size (trial metric)")]
    [InlineData("Long jump for size", 28, "Long jump fo… (trial metric)")]
    public void Cut_LabelOnTrial_LosesLettersAndNotTheMark(string label, int longest, string cut)
        => Assert.Equal(cut, TrialMark.Cut(TrialMark.On(label), longest));

    [Fact]
    public void On_EndlessOrBlankLabel_IsBoundedAndMarked()
    {
        Assert.Equal(90, TrialMark.On(new string('x', 500)).Length);
        Assert.EndsWith("… (trial metric)", TrialMark.On(new string('x', 500)), StringComparison.Ordinal);
        Assert.Equal("(no name) (trial metric)", TrialMark.On(" "));
    }

    [Fact]
    public void Cut_OtherLabel_IsCutAtItsEnd() => Assert.Equal("Hurdle rebound reactive str…", TrialMark.Cut("Hurdle rebound reactive strength index", 28));

    [Theory]
    [InlineData("grip_strength", Quality.MaximalStrength, "Strength")]
    [InlineData("one_leg_hop", Quality.ReactiveAbility, "Jumping and power")]
    [InlineData("chest_throw_new", Quality.UpperBodyPower, "Jumping and power")]
    [InlineData("flying_30m", Quality.MaximalSpeed, "Sprint and momentum")]
    [InlineData("contact_new", Quality.Momentum, "Contact on film")]
    [InlineData("three_cone", Quality.ChangeOfDirection, "Sprint and momentum")]
    public void Of_MetricInNoList_StandsInTheTableOfItsQuality(string id, Quality quality, string table)
    {
        var metric = Made(id, quality);
        Assert.Equal(table, PlayerTable.Of(metric)!.Caption);
        Assert.Same(metric, PlayerTable.Of(metric)!.Columns([MetricCatalogue.Get("back_squat_1rm"), metric])[^1]);
    }

    [Fact]
    public void Columns_MetricsOfTheList_StandInItsOrderAndOthersAreLeftOut()
        => Assert.Equal(["back_squat_1rm", "back_squat_relative"], PlayerTable.Strength.Columns([Made("back_squat_relative", Quality.MaximalStrength), Made("back_squat_1rm", Quality.MaximalStrength), Made("sprint_20yd", Quality.Acceleration)]).Select(m => m.Id));

    [Fact]
    public void Of_MetricOnTrial_StandsInTheTableForThoseWhateverItIs()
        => Assert.Same(PlayerTable.OnTrial, PlayerTable.Of(Made("any", Quality.MaximalStrength) with { IsTrial = true }));

    private static Metric Made(string id, Quality quality) => MetricCatalogue.Get("back_squat_1rm") with { Id = id, Quality = quality };
}

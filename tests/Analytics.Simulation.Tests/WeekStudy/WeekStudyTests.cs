using Analytics.Planning.Solving;
using Analytics.Simulation.WeekStudy;
using Analytics.Simulation.WeekStudy.Document;
using Analytics.Simulation.WeekStudy.Squads;
using Analytics.Simulation.WeekStudy.Weeks;

namespace Analytics.Simulation.Tests.WeekStudy;

/// <summary>One squad of the study: 60 players of known truth, planned as drawn and with planted deficits.</summary>
public class WeekStudyTests
{
    // No clock: on a loaded machine it would decide what is found. The squad is none of the study.
    private static readonly PlanOptions s_options = new(2, Clock: 3600) { GoodEnough = 0.03 };
    private static readonly Lazy<WeekOutcome> s_squad = new(() => WeekOutcome.Of(9001, s_options));

    [Fact]
    public void Week_PlantedDeficits_GetMoreSetsThanTheirGroup()
    {
        Assert.True(s_squad.Value.Planted.HasPlan);
        Assert.True(SetsDifference.Of(s_squad.Value.Planted, null, q => q.IsPlanted, q => q.AllSets) > 1);
        Assert.Equal(0, s_squad.Value.Drawn.Players.Sum(p => p.Qualities.Count(q => q.IsPlanted)));
    }

    [Fact]
    public void Week_NoCalledNeed_DoesTheDefaultOfTheGroup()
    {
        foreach (var plan in new[] { s_squad.Value.Drawn, s_squad.Value.Planted })
        {
            Assert.True(DefaultRule.IsKept(plan));
            Assert.InRange(plan.Players.Count(p => !p.HasCall), 10, 55);
            Assert.All(plan.Players, p => Assert.True(p.IsUntestedOpen));
        }

        // A check that cannot fail is none: with one player's week changed it does.
        var one = s_squad.Value.Drawn.Players.First(p => !p.HasCall && !p.IsApart && s_squad.Value.Drawn.Players.Count(o => o.Group == p.Group && !o.HasCall && !o.IsApart) > 1);
        Assert.False(DefaultRule.IsKept(s_squad.Value.Drawn with { Players = [.. s_squad.Value.Drawn.Players.Select(p => p == one ? p with { Work = "another" } : p)] }));
    }

    [Fact]
    public void Document_OfOneSquad_HoldsEveryQualityAndNothingThatIsNoNumber()
    {
        var text = WeekStudyDocument.Of([s_squad.Value], 9001, s_options);
        Assert.All(StudiedQuality.All, q => Assert.Contains($"| {q.Name} |", text, StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.Contains("week-study --squads 1 --seed 9001 --effort 2 --out docs/week-study.md", text, StringComparison.Ordinal);
        Assert.Contains("2 of 2 weeks have a plan", text, StringComparison.Ordinal);
    }
}

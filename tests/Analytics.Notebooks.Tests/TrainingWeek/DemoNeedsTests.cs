using System.Globalization;
using Analytics.Notebooks.Tests.AthletePage;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Planning.Exercises;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>Needs of the demo season, held against the true abilities that lie beside it.</summary>
public sealed class DemoNeedsTests
{
    private static readonly WeekSquad s_squad = PlanPlayers.Of(Pages.Demo, new WeekQuestion { Monday = new(2026, 6, 15), Days = [new(2026, 6, 15), new(2026, 6, 17), new(2026, 6, 19)] });

    // True values of the latest day less the mean of the group, positive when better; a head of the truth table and its place.
    private static Dictionary<string, double> TrueDistances(string head)
    {
        var lines = File.ReadAllLines(Path.Combine(Pages.Root(), "data-demo", "truth", "abilities.csv")).Select(l => l.Split(',')).ToList();
        var column = Array.IndexOf(lines[0], head);
        var values = lines.Where(c => c[0] == "2026-06-08").ToDictionary(c => c[1], c => double.Parse(c[column], CultureInfo.InvariantCulture), StringComparer.Ordinal);
        var groupOf = Pages.Demo.Athletes.ToDictionary(a => a.Id, a => a.Group, StringComparer.Ordinal);
        var means = values.GroupBy(v => groupOf[v.Key]).ToDictionary(g => g.Key, g => g.Average(v => v.Value), StringComparer.Ordinal);
        return values.ToDictionary(v => v.Key, v => v.Value - means[groupOf[v.Key]], StringComparer.Ordinal);
    }

    // Each need named states 80 % or more; seven in ten leaves room for chance among so few.
    [Theory]
    [InlineData("back_squat_1rm_lb", TrainedQuality.MaximalStrength)]
    [InlineData("countermovement_in", TrainedQuality.ExplosivePower)]
    public void Needs_KnownTruth_AreMostlyRight(string head, TrainedQuality quality)
    {
        var truth = TrueDistances(head);
        var named = s_squad.Players.Where(p => p.Needs.Any(n => n.Quality == quality && n.IsNeed)).Select(p => p.Id).ToList();
        Assert.InRange(named.Count, 5, 25);
        Assert.True(named.Count(id => truth[id] < 0) >= 0.7 * named.Count, $"{named.Count(id => truth[id] < 0)} of {named.Count} are truly behind");
        // Nobody who is truly best of his group is sent to train it.
        Assert.DoesNotContain(named, id => truth[id] == truth.Where(t => Same(t.Key, id)).Max(t => t.Value));
    }

    private static bool Same(string a, string b) => Pages.Demo.Athletes.Single(x => x.Id == a).Group == Pages.Demo.Athletes.Single(x => x.Id == b).Group;

    [Fact]
    public void Needs_NoTrunkTest_SaysSoForEverybody()
        => Assert.All(s_squad.Players, p => Assert.Equal((null, "cannot say: no test of it"), p.Needs.Where(n => n.Quality == TrainedQuality.TrunkControl).Select(n => (n.Probability, n.Reason)).Single()));

    // TC53 is injured to 15 June and limited to upper body from the 16th, as availability.csv says.
    [Fact]
    public void Availability_HurtOnMonday_IsPartlyOutAndLimitedAfterwards()
    {
        Assert.Equal(["TC53"], s_squad.PartlyOut.Select(p => p.AthleteId));
        Assert.Equal(["TC53"], s_squad.Limited.Select(p => p.AthleteId));
        Assert.Empty(s_squad.Out);
    }
}

using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>From the targets of a coach in the season's folder to who gets extra work.</summary>
public sealed class TargetsOfWeekTests
{
    private const string Head = "group;metric;value;unit;note\n";
    private static readonly string[] s_front = ["P01", "P02", "P03", "P04", "P05", "P06"];

    // Front row squats 154 to 174 kg or so, back row 178 to 198.
    private static WrittenSeason With(string rows) => TrainingSeasons.Written().Write("training/targets.csv", Head + rows);

    private static Dictionary<string, QualityNeed> Strength(WrittenSeason season)
        => WeekContext.Of(SeasonReader.Read(season.Folder), "next", "auto").Squad.Players.ToDictionary(p => p.Id, p => p.Needs.Single(n => n.Quality == TrainedQuality.MaximalStrength));

    // 551,2 lb x 0.45359237 = 250.02 kg.
    [Fact]
    public void Target_AboveEverybodyOfAGroup_IsANeedOfAllOfThemAndNamed()
    {
        using var season = With("Front row;back_squat_1rm;551,2;lb;by the first game\n");
        var needs = Strength(season);
        Assert.All(s_front, id => Assert.True(needs[id].IsNeed, id));
        Assert.All(s_front, id => Assert.EndsWith("over 99 % likely worse than the coach's target, 250.0\u2009kg", needs[id].Reason, StringComparison.Ordinal));
        // The other group is held against its middle as before.
        Assert.All(needs.Where(n => !s_front.Contains(n.Key)), n => Assert.DoesNotContain("target", n.Value.Reason, StringComparison.Ordinal));
        Assert.False(needs["P12"].IsNeed);

        var report = TrainingSeasons.Open(season);
        var why = report.Why().ToText();
        Assert.Contains("A need takes at least 80\u2009% probability of being behind the own group by more than too small to matter; where the coach has set a target, of being worse than that target.", why, StringComparison.Ordinal);
        // In HTML, since a grid of text shortens long cells.
        var rows = System.Net.WebUtility.HtmlDecode(report.Why().ToHtml()).Split("<tr");
        Assert.All(s_front, id => Assert.Contains(rows, r => r.Contains($"Player {id}", StringComparison.Ordinal) && r.Contains("target, 250.0", StringComparison.Ordinal)));
        Assert.Contains("or worse than the target the coach has set", report.Methods().ToText(), StringComparison.Ordinal);
        Assert.Contains("targets.csv", report.Provenance().ToText(), StringComparison.Ordinal);
        var rules = report.Rules().ToText();
        Assert.Contains(rules.Split('\n'), l => l.Contains("Front row", StringComparison.Ordinal) && l.Contains("Back squat 1RM", StringComparison.Ordinal) && l.Contains("250.0\u2009kg", StringComparison.Ordinal)
            && l.Contains("6 of 6 players", StringComparison.Ordinal) && l.Contains("by the first game", StringComparison.Ordinal));
    }

    // The weakest is behind the middle of his group, but not behind what the coach asks for.
    [Fact]
    public void Target_BelowEverybody_IsNoNeedWhateverTheMiddle()
    {
        using var without = TrainingSeasons.Written();
        Assert.True(Strength(without)["P01"].IsNeed);
        using var season = With(";back_squat_1rm;100;kg;\n");
        var needs = Strength(season);
        Assert.All(needs.Values, n => Assert.False(n.IsNeed, n.Reason));
        Assert.Contains("under 1 % likely worse than the coach's target, 100.0\u2009kg", needs["P01"].Reason, StringComparison.Ordinal);
        Assert.Contains("all groups", TrainingSeasons.Open(season).Rules().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Target_OfTheGroup_GoesBeforeThatOfAll()
    {
        using var season = With(";back_squat_1rm;100;kg;\nFront row;back_squat_1rm;250;kg;\n");
        var needs = Strength(season);
        Assert.Equal(s_front, needs.Where(n => n.Value.IsNeed).Select(n => n.Key));
        // The target of all is that of the six who have none of their own.
        Assert.Contains(TrainingSeasons.Open(season).Rules().ToText().Split('\n'), l => l.Contains("all groups", StringComparison.Ordinal) && l.Contains("6 of 6 players", StringComparison.Ordinal));
    }

    // The rebound was never tested.
    [Fact]
    public void Target_OfATestNobodyDid_SaysThatItHasNoEffect()
    {
        using var season = With(";hurdle_rsi;2,1;m/s;\n;sprint_10m;1,7;s;\n");
        var rules = TrainingSeasons.Open(season).Rules().ToText();
        Assert.Contains("nobody yet, so it has no effect", rules, StringComparison.Ordinal);
        Assert.Contains("electronic", rules, StringComparison.Ordinal);
    }

    [Fact]
    public void Target_ThatCannotBeUsed_IsListedAndHoldsNobody()
    {
        using var season = With("Front row;back_squat_1rm;250;cm;\n");
        Assert.DoesNotContain("target", Strength(season)["P06"].Reason, StringComparison.Ordinal);
        Assert.Contains("One row of training/targets.csv could not be read and holds nobody", TrainingSeasons.Open(season).Why().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("targets.csv", TrainingSeasons.Open(season, athlete: "P06").Why().ToText(), StringComparison.Ordinal);
        var left = TrainingSeasons.Open(season).HeldBack().ToText();
        Assert.Contains("training/targets.csv, line 2", left, StringComparison.Ordinal);
        Assert.Contains("The unit 'cm' is not one of back_squat_1rm.", left, StringComparison.Ordinal);
        Assert.Contains("Write lb or kg as unit.", left, StringComparison.Ordinal);
    }

    [Fact]
    public void Season_WithoutTargets_SaysNothingOfThemAndIsAsBefore()
    {
        using var without = TrainingSeasons.Written();
        using var empty = With("");
        var (one, other) = (TrainingSeasons.Open(without), TrainingSeasons.Open(empty));
        Assert.Equal(All(one), All(other));
        Assert.Equal(one.Spreadsheet(), other.Spreadsheet());
        Assert.DoesNotContain("target", All(one), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("A need takes at least 80\u2009% probability of being behind the own group by more than too small to matter.", one.Why().ToText(), StringComparison.Ordinal);
        Assert.Contains("Change figures and handling in training/rules.csv.", one.Rules().ToText(), StringComparison.Ordinal);

        static string All(TrainingWeekReport report)
            => string.Concat(new[] { report.Head(), report.Answers(), report.WeekAtAGlance(), report.Sheets(), report.Why(), report.Doses(), report.Feedback(), report.Rules(), report.Methods() }.Select(b => b.ToHtml()));
    }

    [Fact]
    public void PageOfAPlayer_HasTheTargetsOfHisGroupWithoutNotes()
    {
        using var season = With("Front row;back_squat_1rm;250;kg;Player P03 too\nBack row;cmj_height;77;cm;\n;sprint_10m;1,5;s;\n");
        var rules = TrainingSeasons.Open(season, athlete: "P01").Rules().ToText();
        Assert.Contains("250.0\u2009kg", rules, StringComparison.Ordinal);
        Assert.Contains("1.50\u2009s", rules, StringComparison.Ordinal);
        Assert.DoesNotContain("77", rules, StringComparison.Ordinal);
        Assert.DoesNotContain("P03", rules, StringComparison.Ordinal);
    }

    [Fact]
    public void Note_ThatIsMarkup_IsText()
    {
        using var season = With("Front row;back_squat_1rm;250;kg;<img src=x>\n");
        var html = TrainingSeasons.Open(season).Rules().ToHtml();
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x&gt;", html, StringComparison.Ordinal);
    }
}

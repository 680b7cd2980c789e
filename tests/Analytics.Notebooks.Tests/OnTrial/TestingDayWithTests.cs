using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Season;
using static Analytics.Notebooks.Tests.OnTrial.Sketches;

namespace Analytics.Notebooks.Tests.OnTrial;

/// <summary>Metrics on trial in the report of a testing day.</summary>
public sealed class TestingDayWithTests : IDisposable
{
    private readonly WrittenSeason _season = ReportSeasons.ThreeDays(squatGain: 25);

    public void Dispose() => _season.Dispose();

    private TestingDayReport Report => TestingDayReport.Open(_season.Folder);

    [Fact]
    public void With_SoundSketch_StandsInPicturesChangesResultsAndMethodsMarked()
    {
        var report = Report.With(JumpBySprint());
        Assert.Contains("With 1 trial metric, not reviewed: Jump by sprint. Marked wherever it stands. The answers below and the needs leave it out", report.Head().ToText(), StringComparison.Ordinal);
        Assert.All([report.WhereGroupsStand(), report.WhoChanged(), report.Results(), report.Methods()], b => Assert.Contains("Jump by sprint (trial metric)", b.ToText(), StringComparison.Ordinal));
        var methods = report.Methods().ToHtml();
        Assert.Contains("day =&gt; day.Value(&quot;cmj_height&quot;) / day.Value(&quot;sprint_10m&quot;)", methods, StringComparison.Ordinal);
        Assert.Contains("own idea", methods, StringComparison.Ordinal);
        // By hand for P12 on 2 March: sway (12·5 + 2·7) mod 11 − 5 = 3 fifths, 38 + 12 + 0.6 = 50.6 cm; 1.80 + 0.12 + 0.006, written as 1.93 s; 0.506 m / 1.93 s = 0.2622 m/s.
        Assert.Matches(@"Player P12[^\n]* 0\.262", report.TrialTable().ToText());
    }

    [Fact]
    public void With_SoundSketch_ChangesNoOtherNumber()
    {
        var (plain, with) = (Report, Report.With(JumpBySprint(), Jump()));
        var unchanged = new Func<TestingDayReport, Block>[] { r => r.Answers(), r => r.Needs(), r => r.WhatPlayersCarry(), r => r.WhoWasTested(), r => r.HeldBack(), r => r.Cautions(), r => r.Provenance(), r => r.StrengthTable(), r => r.JumpTable(), r => r.SprintTable() };
        Assert.All(unchanged, block => Assert.Equal(block(plain).ToHtml(), block(with).ToHtml()));
        var added = new Func<TestingDayReport, Block>[] { r => r.Head(), r => r.WhereGroupsStand(), r => r.WhoChanged(), r => r.Results(), r => r.Methods() };
        Assert.All(added, block => Assert.Empty(Missing(block(plain), block(with))));
        Assert.All(added, block => Assert.NotEmpty(Missing(block(with), block(plain))));
    }

    [Fact]
    public void With_LeavesTheReportItIsAskedOfAndMayBeAskedAgain()
    {
        var plain = Report;
        var sketch = Jump();
        var both = plain.With(sketch).With(JumpBySprint(), sketch);
        Assert.DoesNotContain("trial", plain.Head().ToText(), StringComparison.Ordinal);
        Assert.Contains("With 2 trial metrics, not reviewed: Jump again and Jump by sprint.", both.Head().ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("Not all of", both.Head().ToText(), StringComparison.Ordinal);
        Assert.Equal(plain.Head().ToHtml(), plain.With().Head().ToHtml());
    }

    [Fact]
    public void With_SameTwice_GivesTheSameBytes()
    {
        string Html() => string.Concat(ReportSeasons.All(Report.With(JumpBySprint(), FailsBetween(42, 43.5))).Select(b => b.ToHtml()));
        Assert.Equal(Html(), Html());
    }

    [Fact]
    public void With_FaultAndClash_AreToldAndTheOthersStand()
    {
        var head = Report.With(Jump("Bad Id", "Bad"), Jump(), Jump(label: "Jump once more"), Jump("cmj_height", "Mine")).Head().ToText();
        Assert.Contains("With 1 trial metric, not reviewed: Jump again.", head, StringComparison.Ordinal);
        Assert.Contains("Not all of the trial metrics could be worked out. Everything else stands.", head, StringComparison.Ordinal);
        Assert.Contains("Bad is left out. The identifier 'Bad Id' must be lower case", head, StringComparison.Ordinal);
        Assert.Contains("Jump once more is left out, since Jump again has the same identifier, jump_again. Give one of them another.", head, StringComparison.Ordinal);
        Assert.Contains("Mine is left out. The identifier 'cmj_height' is that of a library metric", head, StringComparison.Ordinal);
    }

    // Heights are 38 cm and one more a player, with a sway of at most 1 cm: only P01 and P02 ever jump under 39.9 cm.
    [Fact]
    public void With_FormulaThatFailsForOnePlayer_NamesHimWithHisDayAndKeepsTheOthers()
    {
        var report = Report.With(FailsBetween(30, 39.9));
        var head = report.Head().ToText();
        Assert.Contains("Fails, for Player P01 on 12 January, 15 January and 2 March and Player P02 on 2 March: the formula failed: no such thing (InvalidOperationException).", head, StringComparison.Ordinal);
        Assert.Contains("Player P12", report.TrialTable().ToText(), StringComparison.Ordinal);
        Assert.Contains("Clear", report.WhoChanged("back_squat_1rm").ToText(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void With_FormulaThatFailsForAll_SaysSoOnce()
    {
        var wrongUnit = Sketch.Each<JumpTrial>("wrong", "Wrong", "kg", Direction.Higher, (1, 2), (jump, _) => jump.Height);
        var head = Report.With(wrongUnit).Head().ToText();
        Assert.Contains("Wrong, for all 12 players: the formula gives a value in m, which is no number of kg.", head, StringComparison.Ordinal);
        Assert.Single(Regex.Matches(head, "Wrong, for"));
    }

    [Fact]
    public void With_SharedByCodes_TroublesNameNobody()
    {
        var report = TestingDayReport.Of(SeasonShelf.Open(_season.Folder, "", "codes")).With(FailsBetween(30, 39.9), FailsBetween(20, 90) with { Id = "all_but", Label = "All" });
        var html = report.Head().ToHtml();
        Assert.Contains("Fails, for ", html, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"Player P\d|\bP\d\d\b", html);
    }

    // What one report met in a formula on its days is no business of another.
    [Fact]
    public void With_SketchUsedOnAnotherSeason_BringsNoTroubleFromThere()
    {
        var sketch = FailsBetween(30, 39.9);
        Assert.Contains("Fails, for", Report.With(sketch).Head().ToText(), StringComparison.Ordinal);
        using var high = new WrittenSeason().Squad().Day("2026-03-02", jumpGain: 20);
        Assert.DoesNotContain("Fails, for", TestingDayReport.Open(high.Folder).With(sketch).Head().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void With_HostileLabel_IsTextEverywhere()
    {
        var html = string.Concat(ReportSeasons.All(Report.With(Jump("hostile", Hostile) with { Meaning = "<img src=x>" })).Select(b => b.ToHtml()));
        Assert.DoesNotContain("<script>alert", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)&lt;/script&gt;", html, StringComparison.Ordinal);
    }

    // Mat heights and those of a force plate are on two scales; a value made of a jump and a sprint carries both.
    [Fact]
    public void With_OneInputOnAnotherScale_IsNotCompared()
    {
        Assert.Contains("Jump by sprint (trial metric)", Report.With(JumpBySprint()).WhoChanged().ToText(), StringComparison.Ordinal);
        var path = Path.Combine(_season.Folder, "testing", "2026-03-02", "jumps.csv");
        File.WriteAllText(path, File.ReadAllText(path).Replace(";mat;", ";force_plate;", StringComparison.Ordinal));
        var report = Report.With(JumpBySprint());
        Assert.Contains("Jump by sprint (trial metric): no player did this test on both days.", string.Join(' ', Lines(report.WhoChanged())), StringComparison.Ordinal);
        Assert.Contains("electronic, standing start through a beam; force plate", report.WhereGroupsStand().ToHtml(), StringComparison.Ordinal);
    }
}

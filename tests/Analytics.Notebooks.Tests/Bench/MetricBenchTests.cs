using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.Bench;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Quantities;

namespace Analytics.Notebooks.Tests.Bench;

/// <summary>The bench on a squad of twelve in kilograms, with a retest pair and a day seven weeks later.</summary>
public sealed class MetricBenchTests : IDisposable
{
    private readonly WrittenSeason _season = ReportSeasons.ThreeDays();

    public void Dispose() => _season.Dispose();

    private MetricBench Bench => MetricBench.Open(_season.Folder);

    private static MetricSketch Squat(string id = "squat_for_mass", string label = "Squat for size") => Sketch.Each<LiftSet>(
        id, label, "kg/m", Direction.Higher, (40, 200), (set, day) => (AnyQuantity)set.Load / (AnyQuantity)day.Stature!.Value) with { Rule = TrialRule.Best };

    private static MetricSketch JumpCopy(string id = "jump_in_feet") => Sketch.Each<JumpTrial>(id, "Jump in feet", "ft", Direction.Higher, (0.5, 4), (jump, _) => jump.Height) with { Rule = TrialRule.Best };

    private static MetricSketch FailsForOne(string label = "Fails for one", string message = "odd device") => Sketch.Each<JumpTrial>(
        "fails_for_one", label, "cm", Direction.Higher, (10, 100), (jump, day) => day.AthleteId == "P03" ? throw new FormatException(message) : jump.Height);

    private static IEnumerable<Block> All(MetricBench bench, params MetricSketch[] sketches) =>
    [
        bench.Head(sketches), bench.Answers(sketches), .. sketches.Select(bench.Card), .. sketches.Select(bench.ErrorFromInputs), bench.Compare(sketches[0].BestOf(), sketches[0].MeanOf()), bench.Methods(), bench.Provenance(),
    ];

    [Fact]
    public void Answers_RescaledCopy_SaysNothingNewAndNamesTheOriginal()
    {
        var text = Bench.Answers(JumpCopy()).ToText();
        Assert.Contains("Jump in feet: nothing new.", text, StringComparison.Ordinal);
        Assert.Contains("same order as countermovement jump height", text, StringComparison.Ordinal);
        Assert.Contains("Weakest: ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_FaultClashAndTrouble_AreToldAndStopNoOther()
    {
        var clash = JumpCopy("cmj_height");
        var wrong = JumpCopy("in_seconds") with { Unit = "s", Label = "Jump in seconds" };
        var text = Bench.Answers(clash, wrong, FailsForOne(), JumpCopy(), JumpCopy()).ToText();
        Assert.Contains("'cmj_height' is that of a library metric (Countermovement jump height). Give the sketch another one.", text, StringComparison.Ordinal);
        Assert.Contains("Jump in seconds, for all 12 players: the formula gives a value in m, which is no number of s. Change the formula, or the sketch's unit, which is s.", text, StringComparison.Ordinal);
        Assert.Contains("Fails for one, for Player P03 on 12 January 2026, 15 January 2026 and 2 March 2026: the formula failed: odd device (FormatException).", text, StringComparison.Ordinal);
        Assert.Contains("Another sketch has the identifier \u201Cjump_in_feet\u201D too. Give one of them another.", text, StringComparison.Ordinal);
        Assert.Contains("Jump in feet: nothing new.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_SharedSeason_NamesNobodyInATrouble()
    {
        // In a shared season the athlete is not known by this identifier, so the formula is made to fail for all.
        var fails = Sketch.Each<JumpTrial>("fails", "Fails for all", "cm", Direction.Higher, (10, 100), (_, day) => day.Trials.Count > 99 ? null : throw new FormatException("odd device"));
        var text = string.Join('\n', All(MetricBench.Open(_season.Folder, share: "initials"), fails).Select(b => b.ToText()));
        Assert.Contains("odd device", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Player P", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Card_EveryQuestion_IsAnsweredOrSaysWhyNot()
    {
        var text = Bench.Card(Squat()).ToHtml();
        string[] questions =
        [
            "Does it return?", "How far is one test day off?", "Does it see a change that matters?", "Does it say something new?", "Does it run out at an end?", "Is it body mass in other words?",
            "Does it move over the season?", "More with those who train more?", "Does it depend on how it is measured?", "Does it shift from day to day without training?", "Does it depend on who tests?",
            "Do its inputs explain its error?", "What does it cost?",
        ];
        Assert.All(questions, q => Assert.Contains(q, text, StringComparison.Ordinal));
        Assert.Contains("no training was written down between two testing days", text, StringComparison.Ordinal);
        Assert.Contains("no tester was noted beside these tests", text, StringComparison.Ordinal);
        Assert.Contains("too few players were weighed", text, StringComparison.Ordinal);
        Assert.Contains("Taken as exact: stature", text, StringComparison.Ordinal);
    }

    // Twelve players are too few for the verdict to call a small share little, and so they are for the table below it.
    [Fact]
    public void Card_TableAndVerdict_AgreeOnWhatIsNew()
    {
        var bench = Bench;
        // The jump with a fiftieth of something of each player's own.
        var idea = Sketch.Each<JumpTrial>("own_part", "Own part", "cm", Direction.Higher, (0, 90),
            (jump, day) => (AnyQuantity)jump.Height! * (1 + 0.02 * Math.Sin(7 * int.Parse(day.AthleteId[1..], CultureInfo.InvariantCulture))));
        Assert.Contains("Own part: cannot tell yet.", bench.Answers(idea).ToText(), StringComparison.Ordinal);
        Assert.Contains("with 12 players two of many metrics give most of anything by chance; 20 are needed", bench.Answers(idea).ToText(), StringComparison.Ordinal);
        var row = bench.Card(idea).ToText().Split('\n').Single(l => l.StartsWith("Does it say something new?", StringComparison.Ordinal));
        Assert.Matches("new\\? +cannot tell +11 %", row);
    }

    [Fact]
    public void Card_IdeaWithoutUnit_SaysSoInWords()
    {
        var idea = Sketch.Each<JumpTrial>("jump_for_size", "Jump for size", "1", Direction.Higher, (0, 9), (jump, day) => (AnyQuantity?)jump.Height / day.Stature);
        Assert.Contains("of the day, a plain number; believed from 0 to 9.", Bench.Card(idea).ToText(), StringComparison.Ordinal);
        Assert.Contains("of the day, in kg/m; believed from 40 to 200.", Bench.Card(Squat()).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Card_OneDayWithoutRepeats_SaysNobodyKnows()
    {
        using var oneDay = new WrittenSeason().Squad(retests: "[]").Day("2026-01-12");
        var text = MetricBench.Open(oneDay.Folder).Card(Squat()).ToText();
        Assert.Contains("nobody knows", text, StringComparison.Ordinal);
        Assert.Contains("Nobody did it twice", text, StringComparison.Ordinal);
        Assert.Contains("nobody was tested on two occasions", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Card_SketchNobodyHas_SaysSo()
    {
        var none = Sketch.Each<ThrowTrial>("throw_for_size", "Throw for size", "1", Direction.Higher, (1, 9), (t, day) => t.Distance / day.Stature);
        Assert.Contains("No player has a value.", Bench.Card(none).ToText(), StringComparison.Ordinal);
        Assert.Contains("Throw for size: too few values.", Bench.Answers(none).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_LabelAndMessageThatAreMarkup_AreText()
    {
        var hostile = FailsForOne("<script>alert(1)</script>", "<img src=x onerror=alert(1)>") with { Meaning = "</script><b onclick=alert(1)>" };
        var html = string.Concat(All(Bench, hostile).Select(b => b.ToHtml()));
        Assert.Contains("&lt;script&gt;alert(1)", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script>alert", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<b onclick", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_OneSoundDefinition_SaysWhatIsNeededAndWhatIsWrong()
    {
        var text = Bench.Compare(Squat(), Squat() with { Id = "Bad Id", Label = "Bad" }).ToText();
        Assert.Contains("Two definitions or more are needed to compare.", text, StringComparison.Ordinal);
        Assert.Contains("Bad: The identifier 'Bad Id' must be lower case letters", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Blocks_Twice_AreTheSameBytes()
    {
        string Made() => string.Concat(All(Bench, Squat(), JumpCopy()).Select(b => b.ToHtml()));
        Assert.Equal(Made(), Made());
    }
}

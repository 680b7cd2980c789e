using Analytics.Cli.Sketching;
using Analytics.Runner;

namespace Analytics.Cli.Tests.Sketching;

public class SketchSourceTests
{
    [Fact]
    public void Read_Script_FindsSketchesAndWhatIsMadeOfThem()
    {
        Assert.Equal(["plain", "changed", "best", "again", "copy", "whole"], Read("""
            using Analytics.Metrics.Sketching;
            var limit = 2.2;
            var plain = Sketch.Each<JumpTrial>("plain", "Plain", "m", Direction.Higher, (0, limit), (j, d) => j.Distance);
            MetricSketch changed = Sketch.Day("changed", "Changed", "m", Direction.Higher, (0, 3), d => null) with { Rule = TrialRule.Best };
            var best = plain.BestOf();
            var again = best.MeanOf("again") with { Label = "Again" };
            var copy = changed with { Id = "copy" };
            var same = plain;
            var metric = plain.Metric;
            var label = plain.BestOf().Label;
            var other = limit.ToString();
            var whole = Sketch.Day("whole", "Whole", "m", Direction.Higher, (0, 3), d => null).BestOf();
            var second = Sketch.Day("second", "Second", "m", Direction.Higher, (0, 3), d => null).Metric;
            void Inside() { var hidden = Sketch.Day("hidden", "Hidden", "m", Direction.Higher, (0, 3), d => null); }
            """).Names);
    }

    [Fact]
    public void Read_NameDeclaredAgain_HoldsWhatItWasGivenLast()
        => Assert.Equal(["b"], Read("var a = Sketch.Day(1);\nvar b = Sketch.Day(2);\nvar a = 3;").Names);

    [Theory]
    [InlineData("var limit = 2.2;", Fault.Usage, "'ideas.csx' declares no sketch. Write one at the top level")]
    [InlineData("var a = Sketch.Day(1);\nvar b = (2;", Fault.Data, "ideas.csx, line 2: CS1026")]
    public void Read_FileThatCannotBeUsed_SaysWhereAndWhatToDo(string code, Fault kind, string says)
    {
        var failure = Assert.Throws<NotebookException>(() => Read(code));
        Assert.Equal(kind, failure.Kind);
        Assert.Contains(says, failure.Message);
    }

    [Fact]
    public void Read_NotebookWithoutTaggedCells_SaysWhatToTag()
    {
        using var folder = new TempFolder();
        var failure = Assert.Throws<NotebookException>(() => SketchSource.Read(folder.Notebook("var a = Sketch.Day(1);")));
        Assert.Contains("is tagged 'sketch'", failure.Message);
    }

    private static SketchSource Read(string code)
    {
        using var folder = new TempFolder();
        File.WriteAllText(folder.File("ideas.csx"), code);
        return SketchSource.Read(folder.File("ideas.csx"));
    }
}

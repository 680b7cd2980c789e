using System.Xml.Linq;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Tests.Blocks;

public sealed class BlocksTests
{
    private static XElement Parse(Block block) => XElement.Parse("<x>" + block.ToHtml() + "</x>");

    [Fact]
    public void ReportHead_Html_HasOneFirstHeading()
    {
        var head = Parse(new ReportHead("Testing day, 8 June", "Marlow Quarrymen", "54 of 61 players tested"));
        Assert.Equal("Testing day, 8 June", Assert.Single(head.Descendants("h1")).Value);
        Assert.Equal("Marlow Quarrymen \u00b7 54 of 61 players tested", head.Descendants("p").Single().Value);
    }

    [Fact]
    public void Answers_Html_ConclusionComesBeforeNumbers()
    {
        var items = Parse(new Answers(new Answer("Squats moved.", "+7 kg", Tone.Gain), new Answer("No evidence yet.", "n = 3"))).Descendants("li").ToArray();
        Assert.Equal(["Squats moved.", "No evidence yet."], items.Select(i => i.Element("b")!.Value));
        Assert.Equal(["+7 kg", "n = 3"], items.Select(i => i.Element("span")!.Value));
        Assert.Equal("gain", items[0].Attribute("class")!.Value);
        Assert.Null(items[1].Attribute("class"));
    }

    [Fact]
    public void Answers_Html_DistanceStaysOnOneLine()
    {
        var answers = new Answers(new Answer("10-yard time improved.", "10-yard time \u22120.012 s, clear-cut"));
        var item = Parse(answers).Descendants("li").Single();
        Assert.Equal("10\u2011yard time improved.", item.Element("b")!.Value);
        Assert.Equal("10\u2011yard time \u22120.012 s, clear-cut", item.Element("span")!.Value);
        Assert.Contains("10-yard", answers.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Folded_ScreenOnly_IsMarkedForTheSheetThatPrintsItsLineOnly()
    {
        Assert.Equal("fo scr", Parse(new Folded("Pictures", [new Note("a")]) { ScreenOnly = true }).Descendants("details").Single().Attribute("class")!.Value);
        Assert.Equal("fo", Parse(new Folded("Tables", [new Note("a")])).Descendants("details").Single().Attribute("class")!.Value);
        Assert.Contains(".rb .scr:not([open])::details-content{display:none}", Sheet.Css, StringComparison.Ordinal);
    }

    [Fact]
    public void Answers_None_AsksForTheHonestSentence()
    {
        var error = Assert.Throws<ArgumentException>(() => new Answers());
        Assert.Equal("answers", error.ParamName);
        Assert.Contains("no evidence yet", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Section_Html_HoldsItsBodyAndOneSheet()
    {
        var section = Parse(new Section("Who changed", "Read it so.", new Prose("One."), new Folded("More", new Note("Two."))));
        Assert.Equal("Who changed", section.Descendants("h2").Single().Value);
        Assert.Single(section.Descendants("style"));
        Assert.Equal("Two.", section.Descendants("details").Single().Element("p")!.Value);
        Assert.Equal("Who changed\n===========\n\nRead it so.\n\nOne.\n\nMore\n\nTwo.", new Section("Who changed", "Read it so.", new Prose("One."), new Folded("More", new Note("Two."))).ToText());
    }

    [Fact]
    public void Section_ForeignBlock_StandsAsItIs() => Assert.Equal("mine", Parse(new Section("x", "", new Foreign())).Descendants("i").Single().Value);

    [Fact]
    public void Folded_Html_IsClosedOnAScreen() => Assert.Null(Parse(new Folded("Methods", new Prose("x"))).Descendants("details").Single().Attribute("open"));

    [Fact]
    public void Callout_Html_ListsEveryLine()
    {
        var callout = Parse(new Callout("612 rows read, 604 kept, 8 held back.", "line 41", "line 118"));
        Assert.Equal("612 rows read, 604 kept, 8 held back.", callout.Descendants("b").Single().Value);
        Assert.Equal(["line 41", "line 118"], callout.Descendants("li").Select(l => l.Value));
        Assert.Empty(Parse(new Callout("Nothing held back.")).Descendants("ul"));
    }

    [Fact]
    public void Cautions_Html_AreNeverFolded()
    {
        var cautions = Parse(new Cautions("Warm up first."));
        Assert.Empty(cautions.Descendants("details"));
        Assert.Equal("Warm up first.", cautions.Descendants("li").Single().Value);
        Assert.Equal("lines", Assert.Throws<ArgumentException>(() => new Cautions()).ParamName);
    }

    [Fact]
    public void Definitions_Html_PairsTermAndText()
    {
        var list = Parse(new Definitions(("Season", "12 files"), ("Library", "0.1.0"))).Descendants("dl").Single();
        Assert.Equal(["dt", "dd", "dt", "dd"], list.Elements().Select(e => e.Name.LocalName));
        Assert.Equal(["Season", "12 files", "Library", "0.1.0"], list.Elements().Select(e => e.Value));
        Assert.Equal("entries", Assert.Throws<ArgumentException>(() => new Definitions()).ParamName);
    }

    [Fact]
    public void Together_Html_KeepsTheOrder()
        => Assert.Equal(["One.", "Two."], Parse(new Together(new Prose("One."), new Note("Two."))).Descendants("p").Select(p => p.Value));

    private sealed class Foreign : Block
    {
        public override string ToHtml() => "<i>mine</i>";

        public override string ToText() => "mine";
    }
}

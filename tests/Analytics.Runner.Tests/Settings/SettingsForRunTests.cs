using Analytics.Runner.Documents;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Tests.Settings;

public class SettingsForRunTests
{
    private const string Cell = "string season = \"demo\"; // folder\ndouble share = 7.5;\nint players = 3;";

    [Fact]
    public void Apply_GivenValues_AreDeclaredWithTheirTypesRightAfterTheSettings()
    {
        var document = Notebook();
        var used = SettingsForRun.Apply(document, "n.ipynb", [new("share", "2"), new("season", "my \"team\"")]);
        Assert.Equal(4, document.Cells.Count);
        Assert.True(document.Cells[2].HasTag("injected-parameters"));
        Assert.Equal("// Settings given for this run.\nstring season = \"my \\\"team\\\"\";\ndouble share = 2d;", document.Cells[2].Source);
        Assert.Equal(["\"my \\\"team\\\"\"", "2d", "3"], used.Select(s => s.Literal));
    }

    [Fact]
    public void Apply_Again_ReplacesTheEarlierCell()
    {
        var document = Notebook();
        SettingsForRun.Apply(document, "n.ipynb", [new("share", "2")]);
        SettingsForRun.Apply(document, "n.ipynb", [new("players", "4")]);
        Assert.Equal(4, document.Cells.Count);
        Assert.Contains("int players = 4;", document.Cells[2].Source, StringComparison.Ordinal);
        SettingsForRun.Apply(document, "n.ipynb", []);
        Assert.Equal(3, document.Cells.Count);
    }

    [Fact]
    public void Apply_UnknownName_ListsTheKnownOnesAndGuesses()
    {
        var e = Assert.Throws<NotebookException>(() => SettingsForRun.Apply(Notebook(), "n.ipynb", [new("plyers", "2")]));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains("'plyers'", e.Message, StringComparison.Ordinal);
        Assert.Contains("Did you mean 'players'?", e.Message, StringComparison.Ordinal);
        Assert.Contains("season (string), now \"demo\": folder", e.Message, StringComparison.Ordinal);
        Assert.Contains("share (double), now 7.5", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_NothingNear_GuessesNothing()
    {
        var e = Assert.Throws<NotebookException>(() => SettingsForRun.Apply(Notebook(), "n.ipynb", [new("xyzzy", "2")]));
        Assert.DoesNotContain("Did you mean", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_ValueOfAnotherType_SaysWhatIsExpected()
    {
        var e = Assert.Throws<NotebookException>(() => SettingsForRun.Apply(Notebook(), "n.ipynb", [new("players", "2.5")]));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains("'players' of 'n.ipynb' is a whole number (int), not '2.5'", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_SameNameTwice_IsAnError()
    {
        var e = Assert.Throws<NotebookException>(() => SettingsForRun.Apply(Notebook(), "n.ipynb", [new("players", "2"), new("players", "3")]));
        Assert.Contains("'players' of 'n.ipynb' is given twice", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Apply_NotebookWithoutSettings_SaysSo()
    {
        var document = NotebookDocument.Parse(new TinyNotebook().Code("1").ToJson(), "n.ipynb");
        var e = Assert.Throws<NotebookException>(() => SettingsForRun.Apply(document, "n.ipynb", [new("season", "x")]));
        Assert.Equal(Fault.Usage, e.Kind);
        Assert.Contains("has no settings, so 'season' cannot be set", e.Message, StringComparison.Ordinal);
    }

    private static NotebookDocument Notebook()
        => NotebookDocument.Parse(new TinyNotebook().Markdown("# T").Settings(Cell).Code("1").ToJson(), "n.ipynb");
}

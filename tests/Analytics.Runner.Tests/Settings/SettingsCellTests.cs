using Analytics.Runner.Documents;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Tests.Settings;

public class SettingsCellTests
{
    [Fact]
    public void Read_TypedLiterals_GivesNameTypeValueAndComment()
    {
        const string Source = """
            // Where the data is
            string season = "../data-demo"; // the season folder
            string day = "";                // yyyy-MM-dd; empty: the latest
            double confidence = 0.95;
            var players = -3;
            int? limit = null;
            DateOnly from = new DateOnly(2026, 1, 2); // first day
            """;
        var settings = SettingsCell.Read(Source);
        Assert.Equal(["season", "day", "confidence", "players", "limit", "from"], settings.Select(s => s.Name));
        Assert.Equal(["string", "string", "double", "int", "int?", "DateOnly"], settings.Select(s => s.Type.CodeName));
        Assert.Equal("\"../data-demo\"", settings[0].Literal);
        Assert.Equal("the season folder", settings[0].Comment);
        Assert.Equal("yyyy-MM-dd; empty: the latest", settings[1].Comment);
        Assert.Equal("", settings[2].Comment);
    }

    [Fact]
    public void Read_OtherStatements_AreNoSettings()
        => Assert.Empty(SettingsCell.Read("using System.Text;\nint later;\nvar list = new List<int>();\nConsole.WriteLine(1);"));

    [Fact]
    public void Find_TwoTaggedCells_IsAnError()
    {
        var document = NotebookDocument.Parse(new TinyNotebook().Settings("int a = 1;").Settings("int b = 1;").ToJson(), "n.ipynb");
        var e = Assert.Throws<NotebookException>(() => SettingsCell.Find(document, "n.ipynb"));
        Assert.Contains("2 cells tagged 'parameters'", e.Message, StringComparison.Ordinal);
    }
}

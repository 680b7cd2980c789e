namespace Analytics.Season.Tests.Support;

/// <summary>A season with one broken file.</summary>
internal static class BrokenFile
{
    /// <summary>Rows are counted, and the first entry says what is wrong and what would mend it, without a word of the program.</summary>
    /// <param name="path">Path of the file in the season.</param>
    /// <param name="text">Its text.</param>
    /// <param name="rows">Data rows read.</param>
    /// <param name="heldBack">Of them held back.</param>
    /// <param name="says">Part of the reason, a bar, part of the remedy; the reason may hold a bar in quotes.</param>
    public static SeasonData IsTold(string path, string text, int rows, int heldBack, string says)
    {
        using var season = new TemporarySeason().With(path, text);

        var data = season.Read();

        var file = Assert.Single(data.Files, f => f.Path == path);
        Assert.Equal((rows, heldBack), (file.Rows, file.HeldBack));
        var held = data.HeldBack[0];
        Assert.Equal(path, held.File);
        var parts = says.Split('|', says.Contains("'|'", StringComparison.Ordinal) ? 3 : 2);
        var (reason, remedy) = parts.Length is 3 ? (parts[0] + "|" + parts[1], parts[2]) : (parts[0], parts[1]);
        Assert.Contains(reason, held.Reason, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(remedy, held.Remedy, StringComparison.Ordinal);
        Assert.Equal(2, SeasonCheckText.ExitCode(data));
        Assert.DoesNotContain(SeasonCheckText.Lines(data), l => l.Length > 1200 || l.Contains("   at ", StringComparison.Ordinal));
        return data;
    }
}

using Analytics.Metrics.Trials;

namespace Analytics.Season.Tests.Support;

/// <summary>The promise of every reading: each row read was delivered or is listed.</summary>
internal static class Ledger
{
    public static void Check(SeasonData data)
    {
        var delivered = data.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Trials).GroupBy(t => t.Source!.File).ToDictionary(t => t.Key, t => t.Sum(Rows));
        foreach (var file in data.Files)
        {
            Assert.Equal(file.Rows, file.Kept + file.HeldBack);
            Assert.Equal(file.HeldBack, data.HeldBack.Where(h => h.File == file.Path).Sum(h => h.Rows));
            if (file.Path.StartsWith("testing", StringComparison.Ordinal) && !file.Path.Contains("/clips/", StringComparison.Ordinal)) Assert.Equal(file.Kept, delivered.GetValueOrDefault(file.Path));
        }

        Assert.Equal(data.RowsRead, data.RowsKept + data.RowsHeldBack);
        Assert.All(data.HeldBack, h => Assert.False(string.IsNullOrWhiteSpace(h.Reason) || string.IsNullOrWhiteSpace(h.Remedy) || h.File.Contains('\\', StringComparison.Ordinal)));
        Assert.All(data.HeldBack, h => Assert.Contains(data.Files, f => f.Path == h.File));
    }

    /// <summary>Rows a trial was made of: the readings of a repetition on film, else one.</summary>
    private static int Rows(Trial trial) => trial is ContactTrial contact ? contact.Readings.Count : 1;
}

using System.Security.Cryptography;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Promoted;

public class FrozenSeasonTests
{
    private static readonly string Folder = Repository.Path("tests", "oracles", "frozen-season");

    [Fact]
    public void Files_Digests_AreThoseOfTheList()
    {
        var found = Directory.EnumerateFiles(Path.Combine(Folder, "season"), "*", SearchOption.AllDirectories)
            .Select(f => $"{Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(f)))}  {Path.GetRelativePath(Folder, f).Replace('\\', '/')}");
        Assert.Equal(File.ReadAllLines(Path.Combine(Folder, "digests.txt")), found.OrderBy(l => l[66..], StringComparer.Ordinal));
    }

    // Lines of the files without their heads, counted with wc: 901 of tables, 566 of clips; and 249 rows in the seven sheets of the workbook.
    [Fact]
    public void Read_Season_KeepsEveryRowOfTwelveAthletesAndFiveDays()
    {
        Assert.Equal((1716, 1716, 0), (FrozenSeason.Data.RowsRead, FrozenSeason.Data.RowsKept, FrozenSeason.Data.RowsHeldBack));
        Assert.Equal((12, 5), (FrozenSeason.Data.Athletes.Count, FrozenSeason.Data.Days.Count));
        Assert.Equal(8, FrozenSeason.Data.Athletes.Select(a => a.Group).Distinct().Count());
    }

    [Fact]
    public void Read_Season_HasTrialsOfEveryKind()
    {
        var kinds = FrozenSeason.Data.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Trials).Select(t => t.GetType()).Distinct().OrderBy(t => t.Name);
        Assert.Equal([typeof(AgilityTrial), typeof(BodyMeasure), typeof(ContactTrial), typeof(JumpTrial), typeof(LiftSet), typeof(SprintTrial), typeof(StairTrial), typeof(ThrowTrial)], kinds);
        Assert.Equal(["tc01-1", "tc11-1"], FrozenSeason.Data.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Of<ContactTrial>()).Select(c => c.Clip));
    }

    // TC01 stands with 294.2 lb in the workbook of 2 March; 1 lb is 0.45359237 kg: 133.44687525 kg.
    [Fact]
    public void Holds_WeighedMass_PassesAndAnotherFails()
    {
        FrozenSeason.Holds(BodyMetrics.BodyMass, "TC01", "2026-03-02", 133.44687525, "");
        var failure = Assert.ThrowsAny<Exception>(() => FrozenSeason.Holds(BodyMetrics.BodyMass, "TC01", "2026-03-02", 133.4468755, ""));
        Assert.Contains("body_mass of TC01 on 2026-03-02: 133.4468755 kg when promoted, now 133.4468753", failure.Message, StringComparison.Ordinal);
    }
}

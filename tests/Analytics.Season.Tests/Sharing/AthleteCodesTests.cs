using System.Security.Cryptography;
using System.Text;
using Analytics.Season.Sharing;

namespace Analytics.Season.Tests.Sharing;

/// <summary>Codes and initials by themselves.</summary>
public sealed class AthleteCodesTests
{
    private static readonly byte[] Key = [.. Enumerable.Range(0, 32).Select(i => (byte)i)];

    private static Athlete One(string id, string name = "Ada Stone", bool latest = true) => new() { Id = id, Name = name, Position = "", Group = "", InLatestSeason = latest };

    private static IReadOnlyDictionary<string, string> Codes(params Athlete[] athletes) => AthleteCodes.Of(athletes, Key, _ => false);

    // Worked out with Python: hmac.new(bytes(range(32)), b"athlete\nP001\n0", "sha256"), first 8 bytes big-endian, remainders by 22.
    [Theory]
    [InlineData("P001", "RXKNF")]
    [InlineData("p001", "RXKNF")]
    [InlineData("TC04", "CCWWG")]
    public void Of_KeyAndIdentifier_GiveTheCode(string id, string code) => Assert.Equal(code, Codes(One(id))[id]);

    [Fact]
    public void Of_ManyAthletes_CodesAreShortUniqueAndEasyToRead()
    {
        var codes = Codes([.. Enumerable.Range(0, 20_000).Select(i => One($"P{i}"))]).Values.ToList();

        Assert.Equal(codes.Count, codes.Distinct().Count());
        Assert.All(codes, c => Assert.Matches("^[34679CDFGHJKMNPQRTVWXY]{5}$", c));
        Assert.DoesNotContain(codes, c => c.All(char.IsDigit));
    }

    [Fact]
    public void Of_CodeThatIsTaken_AnotherIsFound()
    {
        var first = Codes(One("P001"))["P001"];

        Assert.NotEqual(first, AthleteCodes.Of([One("P001")], Key, c => c == first)["P001"]);
    }

    [Fact]
    public void Of_MoreAthletes_KeepTheCodesOfTheLatestSeason()
    {
        Athlete[] latest = [.. Enumerable.Range(0, 3000).Select(i => One($"P{i}"))];
        var alone = Codes(latest);
        var joined = Codes([.. Enumerable.Range(0, 3000).Select(i => One($"A{i}", latest: false)), .. latest]);

        Assert.All(latest, a => Assert.Equal(alone[a.Id], joined[a.Id]));
    }

    [Fact]
    public void Of_OtherKey_NoCodeIsThatOfAPlainDigestOrOfTheOtherKey()
    {
        Athlete[] squad = [.. Enumerable.Range(0, 200).Select(i => One($"P{i:000}"))];
        var one = Codes(squad);
        var other = AthleteCodes.Of(squad, SHA256.HashData(Encoding.UTF8.GetBytes("other")), _ => false);

        // 200 codes out of 22⁵: an equal one by chance is rarer than 1 in 20,000, two of them rarer by far.
        Assert.InRange(squad.Count(a => one[a.Id] == other[a.Id]), 0, 1);
    }

    [Theory]
    [InlineData("Ada Stone", "A. S.")]
    [InlineData("ada mary stone", "A. S.")]
    [InlineData("Stone, Ada", "A. S.")]
    [InlineData("Corvin Halloway-Pike", "C. H.")]
    [InlineData("Ben Vale Jr.", "B. V.")]
    [InlineData("Vale, Ben III", "B. V.")]
    [InlineData("Élodie Ångström", "É. Å.")]
    [InlineData("Zoë", "Z.")]
    [InlineData("#12", "?")]
    [InlineData("(Ian) O'Holt 2", "I. O.")]
    [InlineData("Jr.", "J.")]
    [InlineData("𝒜da Stone", "𝒜. S.")]
    public void Initials_Name_FirstLettersOfFirstAndLastWord(string name, string initials) => Assert.Equal(initials, AthleteInitials.Of(name));

    [Fact]
    public void Initials_Same_GetNumbers()
    {
        var shown = AthleteInitials.Of([One("P3", "Abe Shaw"), One("P1", "Ada Stone"), One("P2", "Ben Vale"), One("P0", "Al Sand", latest: false)], _ => false);

        Assert.Equal("A. S. 1", shown["P1"]);
        Assert.Equal("A. S. 2", shown["P3"]);
        Assert.Equal("A. S. 3", shown["P0"]);
        Assert.Equal("B. V.", shown["P2"]);
    }

    [Fact]
    public void Initials_ThatAreAnIdentifier_GetANumber()
        => Assert.Equal("A. S. 2", AthleteInitials.Of([One("P1")], t => t is "A. S." or "A. S. 1")["P1"]);
}

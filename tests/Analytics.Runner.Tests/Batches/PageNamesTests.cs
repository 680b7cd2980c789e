using Analytics.Runner.Batches;

namespace Analytics.Runner.Tests.Batches;

public class PageNamesTests
{
    [Fact]
    public void For_PlainValues_KeepsThem() => Assert.Equal(["TC01", "TC02-b_3"], Names("TC01", "TC02-b_3"));

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("..")]
    [InlineData(".hidden")]
    [InlineData("a\\b:c*?\"<>|")]
    [InlineData("tab\tnew\nline\0")]
    [InlineData("name.")]
    [InlineData(" name ")]
    [InlineData("Łukasz Müller")]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("\ud800")]
    public void For_HostileValue_GivesAPlainName(string value) => Assert.Matches("^[A-Za-z0-9_-]{8,69}$", Assert.Single(Names(value)));

    [Fact]
    public void For_VeryLongValues_StayShortAndApart()
    {
        var names = Names(new string('x', 5000) + "1", new string('x', 5000) + "2");
        Assert.All(names, n => Assert.InRange(n.Length, 10, 80));
        Assert.Equal(2, names.Distinct().Count());
    }

    [Fact]
    public void For_CaseOnlyDifferences_StayApartWhereCasesAreTheSame()
        => Assert.Equal(3, Names("tc01", "TC01", "Tc01").Distinct(StringComparer.OrdinalIgnoreCase).Count());

    [Fact]
    public void For_ValuesThatBecomeAlike_StayApart()
        => Assert.Equal(4, Names("a/b", "a\\b", "a-b", "a b").Distinct(StringComparer.OrdinalIgnoreCase).Count());

    [Fact]
    public void For_ValueThatLooksLikeAnothersName_StaysApart()
    {
        var made = Names("a/b")[0];
        Assert.Equal(3, Names("a/b", made, made.ToUpperInvariant()).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    [Fact]
    public void For_OrderOfValues_MakesNoDifference()
        => Assert.Equal(PageNames.For(["A", "a", "b/c"]), PageNames.For(["b/c", "a", "A"]));

    private static List<string> Names(params string[] values)
    {
        var names = PageNames.For(values);
        return [.. values.Select(v => names[v])];
    }
}

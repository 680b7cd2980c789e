using Analytics.Statistics.Special;
using Analytics.Metrics.Tests;

namespace Analytics.Statistics.Tests.Special;

public class LambertWTests
{
    // tests/oracles/sprint/lambert_w.csv: 60-digit arithmetic (mpmath) at the exact double given.
    public static TheoryData<double, double> Rows(string kind)
    {
        var data = new TheoryData<double, double>();
        foreach (var row in OracleTable.Read("sprint/lambert_w.csv"))
            if (row.Text("kind") == kind) data.Add(row["argument"], row["value"]);
        return data;
    }

    // A handful of units in the last place: two exponentials and one division deep.
    private const double Relative = 2e-15;

    [Theory]
    [MemberData(nameof(Rows), "principal")]
    public void Principal_OracleRow_AgreesToDoublePrecision(double x, double expected)
        => Assert.Equal(0, LambertW.Principal(x) / expected - 1, Relative);

    [Theory]
    [MemberData(nameof(Rows), "one_plus")]
    public void OnePlusPrincipal_OracleRow_AgreesToDoublePrecision(double d, double expected)
        => Assert.Equal(0, LambertW.OnePlusPrincipal(d) / expected - 1, Relative);

    [Fact]
    public void Principal_BranchPointAndZero_AreExact()
    {
        // Definition: W0(-1/e) = -1, W0(0) = 0. The double nearest to -1/e may lie just outside the domain.
        Assert.Equal(-1, LambertW.Principal(-0.36787944117144233));
        Assert.Equal(0, LambertW.Principal(0));
        Assert.Equal(0, LambertW.OnePlusPrincipal(0));
        Assert.Equal(1, LambertW.OnePlusPrincipal(double.PositiveInfinity));
    }

    [Theory]
    [InlineData(-0.36788)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Principal_OutsideDomain_NamesTheValue(double x)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => LambertW.Principal(x));
        Assert.Equal("x", error.ParamName);
        Assert.Contains("-0.36787944117144233", error.Message, StringComparison.Ordinal);
        Assert.Contains(x.ToString(System.Globalization.CultureInfo.InvariantCulture), error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-1e-12)]
    [InlineData(double.NaN)]
    public void OnePlusPrincipal_Negative_NamesTheValue(double d)
        => Assert.Equal("d", Assert.Throws<ArgumentOutOfRangeException>(() => LambertW.OnePlusPrincipal(d)).ParamName);

    [Fact]
    public void Principal_AcrossItsDomain_SatisfiesItsDefinition()
    {
        for (var exponent = -30; exponent <= 30; exponent++)
        {
            var x = Math.Pow(10, exponent / 5.0);
            var w = LambertW.Principal(x);
            Assert.Equal(0, (w * Math.Exp(w) / x) - 1, 4e-15 * (1 + w)); // conditioned by 1 + w
        }
    }
}

using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Tests.Distributions;

public class NoncentralStudentLawTests
{
    // Limits of the noncentrality in 30-digit arithmetic.
    [Theory]
    [InlineData(0.5, 8, -1.4898267182945, 2.4596040516466)]
    [InlineData(1.5, 10, -0.59783104153452, 3.531241554915)]
    [InlineData(2.5, 18, 0.34943464642208, 4.5915204315033)]
    [InlineData(3, 28, 0.8666273541542, 5.0871493249695)]
    [InlineData(5, 38, 2.7174474456391, 7.2325473384229)]
    [InlineData(8, 98, 5.7277272084513, 10.241058548744)]
    public void NoncentralityInterval_ThirtyDigitLimits_Agree(double t, double df, double low, double high)
    {
        var interval = NoncentralStudentLaw.NoncentralityInterval(t, df);
        Oracle.Close(low, interval.Low, 1e-12);
        Oracle.Close(high, interval.High, 1e-12);
    }

    // The far lower tail, where routines that add up a series round to 0.
    [Fact]
    public void Cdf_FarLowerTail_KeepsItsDigits()
    {
        Oracle.Close(1.9154193601479346e-19, NoncentralStudentLaw.Cdf(-1, 16, 8.0812), 1e-10);
        Oracle.Close(1.4494482104123354e-12, NoncentralStudentLaw.Cdf(1, 16, 8.0812), 1e-10);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(7.5)]
    [InlineData(2000)]
    [InlineData(1e7)]
    public void Cdf_NoNoncentrality_IsStudent(double df)
    {
        foreach (var t in new[] { -6, -1.2, 0, 0.4, 3 })
            Oracle.Close(StudentLaw.Cdf(t, df), NoncentralStudentLaw.Cdf(t, df, 0), 1e-10);
    }

    [Theory]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e13)]
    public void Cdf_KnownError_IsNormal(double df) => Oracle.Close(NormalLaw.Cdf(-0.7), NoncentralStudentLaw.Cdf(1.8, df, 2.5), 1e-10);

    [Fact]
    public void Tails_AnyArgument_AddToOneAndInvert()
    {
        foreach (var df in new[] { 0.5, 2, 11.3, 150 })
        {
            foreach (var delta in new[] { -40.0, -3, 0, 0.2, 6, 200 })
            {
                foreach (var p in new[] { 1e-12, 0.003, 0.4, 0.5, 0.97 })
                {
                    var t = NoncentralStudentLaw.Quantile(p, df, delta);
                    Oracle.Close(p, NoncentralStudentLaw.Cdf(t, df, delta), 1e-9);
                    Oracle.Close(1, NoncentralStudentLaw.Cdf(t, df, delta) + NoncentralStudentLaw.UpperTail(t, df, delta), 1e-12);
                    if (Math.Abs(t) <= 1000) Oracle.Close(delta, NoncentralStudentLaw.Noncentrality(t, df, p), 1e-8);
                }
            }
        }
    }

    [Fact]
    public void Cdf_Borders_AreZeroAndOne()
    {
        Assert.Equal(0, NoncentralStudentLaw.Cdf(double.NegativeInfinity, 5, 1));
        Assert.Equal(1, NoncentralStudentLaw.Cdf(double.PositiveInfinity, 5, 1));
        Assert.Equal(1, NoncentralStudentLaw.Cdf(1e200, 5, 1), 15);
    }

    [Theory]
    [InlineData(double.NaN, 5, 1, "t is NaN")]
    [InlineData(1, 0, 1, "df is 0; allowed: above 0")]
    [InlineData(1, double.NaN, 1, "df is NaN")]
    [InlineData(1, 5, double.NaN, "noncentrality is NaN; allowed: -10000 to 10000")]
    [InlineData(1, 5, 1e5, "noncentrality is 100000; allowed: -10000 to 10000")]
    public void Cdf_BadArgument_NamesIt(double t, double df, double delta, string message)
        => Assert.Contains(message, Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralStudentLaw.Cdf(t, df, delta)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Quantile_ShareOutside_Throws(double p)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralStudentLaw.Quantile(p, 5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralStudentLaw.Noncentrality(2, 5, p));
    }
}

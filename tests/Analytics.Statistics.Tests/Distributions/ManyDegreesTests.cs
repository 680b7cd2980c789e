using Analytics.Statistics.Distributions;

namespace Analytics.Statistics.Tests.Distributions;

/// <summary>Degrees of freedom so many that a series or an integral would lose its digits or never end.</summary>
public class ManyDegreesTests
{
    // The normal quantile from tables of 20 digits; first-order difference (z³ + z)/(4 df).
    [Theory]
    [InlineData(1e11)]
    [InlineData(1e12)]
    [InlineData(1e16)]
    [InlineData(1e300)]
    public void Student_Quantile_TendsToTheNormal(double df)
    {
        const double z = 1.9599639845400545;
        Oracle.Close(z + (z * z * z + z) / (4 * df), StudentLaw.Quantile(0.975, df), 1e-13);
    }

    // Both sides of the border by different routes.
    [Fact]
    public void Student_AcrossTheBorder_DoesNotJump()
        => Oracle.Close(StudentLaw.Quantile(0.975, 0.99e10), StudentLaw.Quantile(0.975, 1.01e10), 2e-9);

    // R 4.2.2: qchisq(0.975, 1e9).
    [Theory]
    [InlineData(1e9)]
    [InlineData(1.0000001e9)]
    public void ChiSquare_Quantile_AgreesAcrossTheBorder(double df)
        => Oracle.Close(1000087654.148348 + (df - 1e9), ChiSquareLaw.Quantile(0.975, df), 1e-9);

    [Fact]
    public void ChiSquare_Cdf_OfItsQuantile_IsTheShare() => Oracle.Close(0.3, ChiSquareLaw.Cdf(ChiSquareLaw.Quantile(0.3, 1e11), 1e11), 1e-8);

    [Fact]
    public void Noncentral_FarTailOfFewDegrees_IsANumber() => Assert.InRange(NoncentralStudentLaw.UpperTail(0.5, 0.05, -40), 0, 1e-100);

    [Fact]
    public void Noncentral_TooFewDegrees_NamesRange()
        => Assert.Contains("df is 1E-300; allowed: 0.001 to", Assert.Throws<ArgumentOutOfRangeException>(() => NoncentralStudentLaw.Cdf(1, 1e-300, 0)).Message, StringComparison.Ordinal);
}

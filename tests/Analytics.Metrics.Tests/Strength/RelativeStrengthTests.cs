using Analytics.Metrics.Strength;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Strength;

public class RelativeStrengthTests
{
    [Fact]
    public void Allometric_StatedExponent_AgreesWithTheTable()
    {
        var rows = OracleTable.Read("strength/allometric.csv");
        Assert.Equal(10, rows.Count);
        Assert.All(rows, row => Close.ToSixDigits(row["score"], Score(row, new(row["exponent"], "test", "oba2014"))));
    }

    [Fact]
    public void Allometric_TwoThirds_AgreesWithTheTable()
    {
        var rows = OracleTable.Read("strength/allometric_two_thirds.csv");
        Assert.Equal(3, rows.Count);
        Assert.All(rows, row => Close.ToSixDigits(row["score"], Score(row, AllometricExponent.TwoThirds)));
    }

    // 160 kg at 80 kg is 2 kg/kg.
    [Fact]
    public void Ratio_LiftedOverBodyMass_HasNoUnitLeft()
    {
        Assert.Equal(2, RelativeStrength.Ratio(Mass.FromKilograms(160), Mass.FromKilograms(80)));
        Assert.Equal(2, RelativeStrength.Ratio(Mass.FromPounds(360), Mass.FromPounds(180)), 1e-14);
    }

    // Oba et al. 2014, printed exponents.
    [Fact]
    public void FootballExponents_AreThePrintedOnes()
    {
        Assert.Equal(0.559, AllometricExponent.FootballBenchPress.Value);
        Assert.Equal(0.287, AllometricExponent.FootballClean.Value);
        Assert.Equal(0.496, AllometricExponent.FootballSquat.Value);
    }

    [Fact]
    public void Allometric_Score_StatesItsExponent()
    {
        var score = RelativeStrength.Allometric(Mass.FromKilograms(160), Mass.FromKilograms(100), AllometricExponent.FootballBenchPress);

        Assert.Equal("kg/kg^0.559", score.Unit);
        Assert.Equal("12.19 kg/kg^0.559", score.ToString());
    }

    [Fact]
    public void Ratio_BodyMassOfZero_IsRefused()
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => RelativeStrength.Ratio(Mass.FromKilograms(160), Mass.Zero));

        Assert.Equal("bodyMass", error.ParamName);
        Assert.Contains("above 0 kg; got 0 kg", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.6)]
    [InlineData(double.NaN)]
    public void AllometricExponent_OutOfRange_IsRefused(double value)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new AllometricExponent(value, "test", "oba2014"));

        Assert.Equal("value", error.ParamName);
        Assert.Contains(FormattableString.Invariant($"0 to 1.5; got {value}"), error.Message, StringComparison.Ordinal);
    }

    private static double Score(OracleRow row, AllometricExponent exponent)
        => RelativeStrength.Allometric(Mass.FromKilograms(row["lifted_kg"]), Mass.FromKilograms(row["body_mass_kg"]), exponent).Value;
}

namespace Analytics.Quantities.Tests;

public class UnitTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(-2.5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Constructor_FactorOutOfRange_IsRefused(double factor)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new Unit("x", factor));

        Assert.Equal("toSi", error.ParamName);
        Assert.Contains($"got {factor.ToString(System.Globalization.CultureInfo.InvariantCulture)}", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void NumberOf_WhatSiOfMade_IsTheNumber()
    {
        var pound = new Unit("lb", UnitFactors.KilogramsPerPound);

        Assert.Equal(225, pound.NumberOf(pound.SiOf(225)), 1e-13);
        Assert.Equal(102.05828325, pound.SiOf(225), 1e-13);
    }
}

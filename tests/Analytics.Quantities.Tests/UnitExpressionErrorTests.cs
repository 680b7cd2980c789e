namespace Analytics.Quantities.Tests;

/// <summary>Units that cannot be read: the message names the unit, the part and what is known.</summary>
public class UnitExpressionErrorTests
{
    [Theory]
    [InlineData("", "a unit symbol is missing")]
    [InlineData("   ", "a unit symbol is missing")]
    [InlineData("stone", "'stone' is not known")]
    [InlineData("kg m", "'kg m' is not known")]
    [InlineData("KG", "'KG' is not known")]
    [InlineData("kg·", "a unit symbol is missing")]
    [InlineData("/s", "a unit symbol is missing")]
    [InlineData("kg··m", "a unit symbol is missing")]
    [InlineData("()", "a unit symbol is missing")]
    [InlineData("°/(N·s", "a ')' is missing")]
    [InlineData("(", "a unit symbol is missing")]
    [InlineData("N·s)", "')' cannot follow here")]
    [InlineData("(N)s", "'s' cannot follow here")]
    [InlineData("kg(m)", "'(m)' cannot follow here")]
    [InlineData("m^", "a number must follow '^'")]
    [InlineData("m^x", "a number must follow '^'")]
    [InlineData("m^--2", "a number must follow '^'")]
    [InlineData("m^1.2.3", "a number must follow '^'")]
    [InlineData("m^2^3", "'^3' cannot follow here")]
    [InlineData("m²³", "'³' cannot follow here")]
    [InlineData("m^1e3", "'e3' cannot follow here")]
    [InlineData("2", "'2' is not known")]
    [InlineData("km^200", "too large or too small")]
    [InlineData("mm^200", "too large or too small")]
    [InlineData("km^200/km^200", "too large or too small")]
    public void Parse_WhatIsNoUnit_IsRefusedInWords(string unit, string part)
    {
        var error = Assert.Throws<FormatException>(() => UnitExpression.Parse(unit));

        Assert.StartsWith($"The unit '{unit}' cannot be read: ", error.Message, StringComparison.Ordinal);
        Assert.Contains(part, error.Message, StringComparison.Ordinal);
        Assert.Contains("Known are 1, %, kg, g, lb, m, ", error.Message, StringComparison.Ordinal);
        Assert.EndsWith("for example kg·m/s or °/(N·s).", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_Null_IsRefused() => Assert.Throws<ArgumentNullException>(() => UnitExpression.Parse(null!));

    // A hundred thousand parentheses would be as many calls deep: the program would end without a word.
    [Theory]
    [InlineData(101)]
    [InlineData(100_000)]
    public void Parse_TooLong_IsRefusedBeforeItIsRead(int characters)
    {
        var error = Assert.Throws<FormatException>(() => UnitExpression.Parse(new string('(', characters)));

        Assert.Equal($"The unit '((((((((((((((((((((…' has {characters} characters; at most 100 are allowed.", error.Message);
    }

    [Fact]
    public void Parse_AsDeepAsTheLengthAllows_IsRead()
        => Assert.Equal("N", UnitExpression.Parse(new string('(', 49) + "N" + new string(')', 49)).Text.Trim('(', ')'));
}

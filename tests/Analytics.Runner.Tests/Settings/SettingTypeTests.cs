using Analytics.Runner.Settings;

namespace Analytics.Runner.Tests.Settings;

public class SettingTypeTests
{
    [Theory]
    [InlineData("double", "2", "2d")]
    [InlineData("double", "-0.5e-3", "-0.0005d")]
    [InlineData("decimal", "2.50", "2.50m")]
    [InlineData("int", "-7", "-7")]
    [InlineData("long", "7", "7L")]
    [InlineData("bool", "True", "true")]
    [InlineData("string", "a \"b\"\\c\n", "\"a \\\"b\\\"\\\\c\\n\"")]
    [InlineData("DateOnly", "2026-03-02", "new DateOnly(2026, 3, 2)")]
    [InlineData("int?", "null", "null")]
    [InlineData("string", "null", "\"null\"")]
    public void ToLiteral_FittingText_KeepsTheDeclaredType(string type, string text, string literal)
        => Assert.Equal(literal, SettingType.Find(type)!.ToLiteral(text));

    [Theory]
    [InlineData("int", "2.5")]
    [InlineData("int", "2147483648")]
    [InlineData("double", "1,5")]
    [InlineData("double", "NaN")]
    [InlineData("double", "1e999")]
    [InlineData("decimal", "1,000")]
    [InlineData("bool", "yes")]
    [InlineData("DateOnly", "02.03.2026")]
    [InlineData("DateOnly", "2026-02-30")]
    [InlineData("int", "null")]
    public void ToLiteral_OtherText_IsRefused(string type, string text)
        => Assert.Null(SettingType.Find(type)!.ToLiteral(text));

    [Fact]
    public void Find_TypeThatIsNoSetting_IsNull() => Assert.Null(SettingType.Find("List<int>"));
}

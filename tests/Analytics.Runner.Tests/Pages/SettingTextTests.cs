using Analytics.Runner.Pages;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Tests.Pages;

public class SettingTextTests
{
    [Theory]
    [InlineData("\"../data-demo\"", "\"data-demo\"")]
    [InlineData("\"../../../home/somebody/seasons/2026/\"", "\"2026\"")]
    [InlineData("\"/home/somebody/2026\"", "\"2026\"")]
    [InlineData("\"C:\\\\Users\\\\somebody\\\\2026\"", "\"2026\"")]
    [InlineData("@\"C:\\Users\\somebody\\2026\"", "\"2026\"")]
    [InlineData("\"~/2026\"", "\"2026\"")]
    [InlineData("\"../../home/somebody/2024;../../home/somebody/2025/\"", "\"2024;2025\"")]
    [InlineData("\"./2024; /home/somebody/2025 ;C:\\\\Users\\\\somebody\\\\2026\"", "\"2024;2025 ;2026\"")]
    [InlineData("\"2024;/home/somebody/2025\"", "\"2024;2025\"")]
    [InlineData("\"../..\"", "\"\"")]
    [InlineData("\"a;b\"", "\"a;b\"")]
    [InlineData("\"m/s;km/h\"", "\"m/s;km/h\"")]
    [InlineData("\"../somebody/2024; /home/somebody/2025\"", "\"2024;2025\"")]
    [InlineData("\"./2024\"", "\"2024\"")]
    [InlineData("\"m/s\"", "\"m/s\"")]
    [InlineData("\"2026-03-02\"", "\"2026-03-02\"")]
    [InlineData("\"\"", "\"\"")]
    public void ForReaders_Text_ShowsOnlyTheLastNameOfAPath(string literal, string shown)
        => Assert.Equal(shown, SettingText.ForReaders(Setting("string", literal)).Literal);

    [Theory]
    [InlineData("double", "2d", "2")]
    [InlineData("long", "3L", "3")]
    [InlineData("decimal", "2.50m", "2.50")]
    [InlineData("bool", "true", "true")]
    [InlineData("int?", "null", "null")]
    public void ForReaders_OtherTypes_LoseTheSuffixOfTheLiteral(string type, string literal, string shown)
        => Assert.Equal(shown, SettingText.ForReaders(Setting(type, literal)).Literal);

    private static Setting Setting(string type, string literal) => new("s", SettingType.Find(type)!, literal, "");
}

using Analytics.Notebooks.AthletePage;

namespace Analytics.Notebooks.Tests.AthletePage;

public sealed class OthersFilterTests
{
    private static readonly OthersFilter Filter = new(Pages.Demo, Pages.Demo.Athletes[0]);

    [Theory]
    [InlineData("the row repeats line 4 of TC02", true)]
    [InlineData("clips/fuaveia-1.csv", true)]
    [InlineData("Matalino Fuaveia has it", true)]
    [InlineData("tc03_attempt 2", true)]
    [InlineData("TC01, Alden Brackwater: load_lb 4450 is above 1102", false)]
    [InlineData("testing/2026-06-08/lifts.csv", false)]
    public void Text_ThatTellsOfAnother_IsFound(string text, bool tells) => Assert.Equal(tells, Filter.Tells(text));
}

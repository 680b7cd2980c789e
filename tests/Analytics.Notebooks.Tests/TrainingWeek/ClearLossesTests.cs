using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>Clear losses at the latest testing day, for the next loads.</summary>
public sealed class ClearLossesTests
{
    [Fact]
    public void Of_OneFellFar_IsNamedWithWhatHeLost()
    {
        using var season = ReportSeasons.ThreeDays();
        ReportSeasons.Replace(season, "lifts.csv", "P01;back_squat;1;", "100,0;1");
        var data = SeasonReader.Read(season.Folder);
        var (player, text) = Assert.Single(ClearLosses.Of(data, new(2026, 3, 9)));
        Assert.Equal("P01", player);
        Assert.Matches(@"^squat \u2212\d+\.\d\u2009kg \(.*\) from 15 January to 2 March, clear loss$", text);
        // Before that day nobody had lost anything, and one day is no change.
        Assert.Empty(ClearLosses.Of(data, new(2026, 2, 23)));
        Assert.Empty(ClearLosses.Of(data, new(2026, 1, 13)));
    }
}

using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Joining;

/// <summary>Seasons that cannot be joined: one exception that says which, why and what to do.</summary>
public sealed class SeasonJoinFaultTests : IDisposable
{
    private readonly TwoSeasons seasons = new();

    public void Dispose() => seasons.Dispose();

    private string Fault(string earlier) => Assert.Throws<SeasonException>(() => SeasonShelf.Open(seasons.Latest.Folder, earlier)).Message;

    [Fact]
    public void Open_EarlierMissing_SaysWhich()
        => Assert.Equal("The earlier season 'no-such-season' cannot be joined. There is no season folder 'no-such-season'. Check the spelling, or make one with new-season.", Fault($"{seasons.Earlier.Folder};no-such-season"));

    [Fact]
    public void Open_EarlierUnusable_SaysWhich()
    {
        seasons.Earlier.Without("season.json");

        Assert.Equal($"The earlier season '{seasons.Earlier.Folder}' cannot be joined. There is no season.json in the folder, so it is no season. Check the folder, or make a season with new-season.", Fault(seasons.Earlier.Folder));
    }

    [Fact]
    public void Open_SameFolderTwice_IsRefused()
        => Assert.Contains("is named twice among the earlier seasons", Fault($"{seasons.Earlier.Folder};{seasons.Earlier.Folder}/testing/.."), StringComparison.Ordinal);

    [Fact]
    public void Open_ItselfAsEarlier_IsRefused() => Assert.Contains("cannot be joined with itself", Fault(seasons.Latest.Folder + "/"), StringComparison.Ordinal);

    [Fact]
    public void Open_LinkToTheSameFolder_IsRefused()
    {
        using var place = new TemporarySeason();
        var link = Path.Combine(place.Folder, "link");
        Directory.CreateSymbolicLink(link, seasons.Latest.Folder);

        Assert.Contains("cannot be joined with itself", Fault(link), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_EarlierBeginsLater_SaysTheOrder()
    {
        var message = Assert.Throws<SeasonException>(() => SeasonShelf.Open(seasons.Earlier.Folder, seasons.Latest.Folder)).Message;

        Assert.Equal("The seasons are not in order: 'Spring 2026' begins on 2026-01-05, 'Spring 2025' on 2025-01-06. Name earlier seasons oldest first, and the latest as the season itself.", message);
    }

    [Fact]
    public void Open_SameTestingDayInBoth_IsRefused()
    {
        seasons.Earlier.With("season.json", TwoSeasons.EarlierSettings.Replace("2025-07-31", "2026-03-31", StringComparison.Ordinal)).With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\nP009,221\n");

        Assert.Equal("The testing day 2026-03-02 lies in two seasons, 'Spring 2025' and 'Spring 2026', and would count twice. Keep it in one of the two folders.", seasons.Fault());
    }

    [Fact]
    public void Open_DayOutsideItsSeasonAlsoInTheOther_CountsOnce()
    {
        seasons.Earlier.With("testing/2026-03-02/body.csv", "athlete_id,mass_lb\nP009,221\n");

        var data = seasons.Open();

        Assert.Equal(["P001", "P002"], Assert.Single(data.Days, d => d.Date == new DateOnly(2026, 3, 2)).Athletes.Select(a => a.AthleteId));
        Ledger.Check(data);
    }

    [Fact]
    public void Open_SameSessionInBoth_IsRefused()
    {
        seasons.Earlier.With("season.json", TwoSeasons.EarlierSettings.Replace("2025-07-31", "2026-03-31", StringComparison.Ordinal)).With("sessions.csv", "date,athlete_id,minutes\n2026-02-02,P001,60\n");

        Assert.Contains("Training of the same athlete on 2026-02-02 stands in the sessions of two seasons, 'Spring 2025' and 'Spring 2026'", seasons.Fault(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_TooMany_SaysHowMany()
        => Assert.Equal("20 earlier seasons are named; at most 19 can be joined. Name fewer.", Fault(string.Join(';', Enumerable.Range(0, 20))));
}

using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Joining;

/// <summary>Two seasons become one.</summary>
public sealed class SeasonJoinTests : IDisposable
{
    private readonly TwoSeasons seasons = new();

    public void Dispose() => seasons.Dispose();

    [Fact]
    public void Open_EarlierSeason_DaysOfBothStandByDate()
    {
        var data = seasons.Open();

        Assert.Equal([new DateOnly(2025, 1, 20), new DateOnly(2026, 3, 2)], data.Days.Select(d => d.Date));
        Assert.Equal(["P001", "P009"], data.Days[0].Athletes.Select(a => a.AthleteId));
        Assert.Equal(["P001", "P002"], data.Days[1].Athletes.Select(a => a.AthleteId));
    }

    [Fact]
    public void Open_EarlierSeason_SettingsAreOfTheLatestOverTheWholeSpan()
    {
        var settings = seasons.Open().Settings;

        Assert.Equal(("Harbour Bulls", "Spring 2026", "lb"), (settings.Club, settings.Season, settings.MassUnit));
        Assert.Equal((new DateOnly(2025, 1, 6), new DateOnly(2026, 7, 31)), (settings.From, settings.To));
        Assert.Equal([new RetestPair(new DateOnly(2025, 1, 20), new DateOnly(2025, 1, 23))], settings.Retests);
    }

    [Fact]
    public void Open_EarlierSeason_IsListed()
        => Assert.Equal([new SeasonSpan("Spring 2025", new DateOnly(2025, 1, 6), new DateOnly(2025, 7, 31))], seasons.Open().Earlier);

    [Fact]
    public void Open_IdentifierInOtherCase_IsTheSameAthleteAsTheLatestWritesHim()
    {
        var data = seasons.Open();

        Assert.Equal(["P001", "P002", "P009"], data.Athletes.Select(a => a.Id));
        Assert.All(data.Days[0].Athletes[0].Trials, t => Assert.Equal("P001", t.AthleteId));
        Assert.Equal(["P001", "P001"], data.Sessions.Select(s => s.AthleteId));
    }

    [Fact]
    public void Open_AthleteWhoLeft_StaysWithHisResultsAndARemark()
    {
        var data = seasons.Open();

        Assert.Equal([("P001", true), ("P002", true), ("P009", false)], data.Athletes.Select(a => (a.Id, a.InLatestSeason)));
        Assert.Contains(data.Notes, n => n is { File: "athletes.csv", Text: "1 athlete of earlier seasons is not in this list; their results stay." });
    }

    [Fact]
    public void Open_Spells_AreThoseOfAllSeasonsAndEndWithTheirSeason()
    {
        var data = seasons.Open();

        Assert.Equal([new Absence(new(2025, 3, 1), new(2025, 3, 9), "ill"), new Absence(new(2026, 4, 1), null, "limited")], data.Athletes[0].Absences);
        Assert.Equal([new Absence(new(2025, 5, 1), new(2025, 7, 31), "injured")], data.Athletes[2].Absences);
        Assert.Contains(data.Notes, n => n.File == "Spring 2025/availability.csv" && n.Text.Contains("taken to last to 2025-07-31", StringComparison.Ordinal));
    }

    [Fact]
    public void Open_BirthYear_ComesFromTheSeasonThatHasIt() => Assert.Equal(2001, seasons.Open().Athletes[0].BirthYear);

    [Fact]
    public void Open_PathsOfTheEarlierSeason_BeginWithItsNameAndTellNoFolder()
    {
        var data = seasons.Open();

        Assert.Equal("Spring 2025/testing/2025-01-20/lifts.csv", Assert.Single(data.HeldBack).File);
        Assert.Equal("Spring 2025/testing/2025-01-20/body.csv", data.Days[0].Athletes[0].Of<BodyMeasure>().Single().Source!.File);
        Assert.Contains(data.Files, f => f.Path == "testing/2026-03-02/lifts.csv");
        Assert.All(data.Files, f => Assert.True(f.Path.StartsWith("Spring 2025/", StringComparison.Ordinal) || !f.Path.Contains("2025", StringComparison.Ordinal), f.Path));
        Assert.DoesNotContain(Path.GetFileName(seasons.Earlier.Folder), string.Join(' ', data.Files.Select(f => f.Path).Concat(data.Notes.Select(n => n.File + n.Text))), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_CountsAddUpOverBothSeasons()
    {
        var data = seasons.Open();

        Ledger.Check(data);
        Assert.Equal((15, 14, 1), (data.RowsRead, data.RowsKept, data.RowsHeldBack));
    }

    [Fact]
    public void Open_BodyMassOfTheEarlierSeason_DoesNotHoldInTheLater()
    {
        var data = seasons.Open();

        Assert.Equal(221 * 0.45359237, data.Days[0].Athletes[0].BodyMass!.Value.Kilograms, 9);
        Assert.Null(data.Days[1].Athletes[0].BodyMass);
    }

    [Fact]
    public void Open_FarFromAnotherSeason_IsJudgedWithinItsOwn()
    {
        const string sets = "athlete_id,lift,load_lb,reps\nP001,back_squat,420,3\n";
        string[] days = ["testing/2025-01-20/lifts.csv", "testing/2025-02-20/lifts.csv", "testing/2025-03-20/lifts.csv"];
        using var one = new TemporarySeason().With("season.json", TwoSeasons.EarlierSettings.Replace("2025-07-31", "2026-07-31", StringComparison.Ordinal))
            .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_squat,190,3\n");
        seasons.Latest.With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_squat,190,3\n");
        foreach (var day in days)
        {
            one.With(day, sets);
            seasons.Earlier.With(day, sets);
        }

        // In one folder 190 beside three days of 420 looks like kilograms; after a year away it may be what he lifts.
        Assert.Single(one.Read().HeldBack);
        Assert.Empty(seasons.Open().HeldBack);
    }

    [Theory]
    [InlineData("Ada Stein,LB,Linebackers,2001", "P001 is Ada Stone now and was Ada Stein in Spring 2025; taken for one person. Check that it is the same person; if not, give one of the two an identifier of his own.")]
    [InlineData("Ada Stone,WR,Receivers,2001", "P001 (Ada Stone) is in the group Linebackers now and was in Receivers in Spring 2025; all his results count for Linebackers.")]
    public void Open_AthleteWhoDiffers_IsRemarked(string earlier, string says)
    {
        seasons.Earlier.With("athletes.csv", $"athlete_id,name,position,group,birth_year\nP001,{earlier}\nP009,Ian Holt,QB,Quarterbacks,1999\n");

        var data = seasons.Open();

        Assert.Contains(data.Notes, n => n.File == "athletes.csv" && n.Text == says);
        Assert.Equal(("Ada Stone", "Linebackers"), (data.Athletes[0].Name, data.Athletes[0].Group));
    }

    [Fact]
    public void Open_OtherBirthYear_IsRemarked()
    {
        seasons.Latest.With("athletes.csv", "athlete_id,name,birth_year\nP001,Ada Stone,2004\nP002,Ben Vale,2002\n");

        Assert.Contains(seasons.Open().Notes, n => n.Text == "P001 (Ada Stone) is born in 2004 now and in 2001 in Spring 2025; taken for one person. Check that it is the same person.");
    }

    [Fact]
    public void Open_ThreeSeasonsTwoOfOneName_AreToldApart()
    {
        using var oldest = new TemporarySeason()
            .With("season.json", TwoSeasons.EarlierSettings.Replace("2025", "2024", StringComparison.Ordinal).Replace("Spring 2024", "spring 2025", StringComparison.Ordinal))
            .With("testing/2024-03-04/body.csv", "athlete_id,mass_lb\nP001,210\n");

        var data = SeasonShelf.Open(seasons.Latest.Folder, $"{oldest.Folder} ; {seasons.Earlier.Folder};");

        Assert.Equal(["spring 2025", "Spring 2025 (2)"], data.Earlier.Select(e => e.Name));
        Assert.Equal([2024, 2025, 2026], data.Days.Select(d => d.Date.Year));
        Ledger.Check(data);
    }

    [Fact]
    public void Open_EarlierNameLooksLikeAFolder_GetsAnotherName()
    {
        seasons.Earlier.With("season.json", TwoSeasons.EarlierSettings.Replace("Spring 2025", "testing", StringComparison.Ordinal));

        Assert.Equal("testing (2)", Assert.Single(seasons.Open().Earlier).Name);
        Assert.Contains(seasons.Open().Files, f => f.Path == "testing (2)/athletes.csv");
    }
}

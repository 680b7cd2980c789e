using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Sharing;

/// <summary>What a shared season says, and that it says the same but for names.</summary>
public sealed class SharedSeasonTests : IDisposable
{
    private readonly TemporarySeason season = new TemporarySeason()
        .With("share-key.txt", new string('7', 64))
        .With("sessions.csv", "date,athlete_id,focus,minutes\n2026-02-03,P001,speed,60\n2026-02-02,P001,speed with Ben,60\n2026-02-02,P002,strength,60\n2026-02-02,P003,P001 and Ada Stone,60\n")
        .With("availability.csv", "athlete_id,from,to,status\nP002,2026-03-01,,injured\n")
        .With("testing/2026-03-02/body.csv", "athlete_id,mass_lb,stature_in\nP001,221,72\nP002,222,71\nP003,223,77\n")
        .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_squat,400,3\nP002,back_squat,\"41O,5\",3\nAda Stone,back_squat,300,3\nP01,back_squat,300,3\nP003,back_squat,12 000,3\n")
        .With("photos/p001.jpg", "x");

    public void Dispose() => season.Dispose();

    private SeasonData Open(string share) => SeasonShelf.Open(season.Folder, share: share);

    [Theory]
    [InlineData("Codes")]
    [InlineData(" INITIALS ")]
    [InlineData("names")]
    public void Open_Word_InAnyCase(string share) => Assert.Equal(4, Open(share).Athletes.Count);

    [Theory]
    [InlineData("")]
    [InlineData("numbers")]
    public void Open_OtherWord_ListsTheThree(string share)
        => Assert.Equal($"share is '{share}'; it is one of names, initials, codes.", Assert.Throws<SeasonException>(() => Open(share)).Message);

    [Fact]
    public void Open_Codes_StandInTheirOwnOrderEverywhere()
    {
        var data = Open("codes");
        var codes = data.Athletes.Select(a => a.Id).ToList();

        Assert.Equal(codes.Order(StringComparer.Ordinal), codes);
        Assert.NotEqual(SeasonShelf.Codes(season.Folder).Select(c => c.Code), codes);
        Assert.All(data.Days, d => Assert.Equal(d.Athletes.Select(a => a.AthleteId).Order(StringComparer.Ordinal), d.Athletes.Select(a => a.AthleteId)));
        Assert.Equal(data.Sessions.OrderBy(s => s.Date).ThenBy(s => s.AthleteId, StringComparer.Ordinal), data.Sessions);
        Assert.Equal(codes, data.Athletes.Select(a => a.Name));
    }

    [Fact]
    public void Open_Codes_NoLineTellsWhoStandsWhereInASheet()
    {
        var data = Open("codes");

        Assert.All(data.HeldBack, h => Assert.Equal(0, h.Line));
        Assert.All(data.Days.SelectMany(d => d.Athletes).SelectMany(a => a.Trials), t => Assert.Equal(0, t.Source!.Line));
        Assert.DoesNotContain(EveryText.Of(data), t => t.Contains("line 2", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_Shared_SaysTheSameOfEveryAthlete(string share)
    {
        var plain = Open("names");
        var shared = Open(share);
        var called = share is "codes"
            ? SeasonShelf.Codes(season.Folder).ToDictionary(c => c.AthleteId, c => c.Code)
            : new Dictionary<string, string> { ["P001"] = "A. S.", ["P002"] = "B. V.", ["P003"] = "C. R.", ["P004"] = "D. F." };

        foreach (var athlete in plain.Athletes)
        {
            var other = Assert.Single(shared.Athletes, a => a.Id == called[athlete.Id]);
            Assert.Equal((athlete.Position, athlete.Group), (other.Position, other.Group));
            Assert.Equal(athlete.Absences, other.Absences);
            Assert.Equal(athlete.BirthYear, other.BirthYear);
            Assert.Null(other.Stature);
            Assert.Equal(Values(plain, athlete.Id), Values(shared, other.Id));
        }

        Assert.Equal((plain.RowsRead, plain.RowsKept, plain.RowsHeldBack), (shared.RowsRead, shared.RowsKept, shared.RowsHeldBack));
        Assert.Equal(plain.Files.Select(f => f.Sha256).Order(StringComparer.Ordinal), shared.Files.Select(f => f.Sha256).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Open_Initials_HeldBackRowsSayWhyWithoutWhatWasTyped()
    {
        var held = Open("initials").HeldBack;

        Assert.Contains(held, h => h is { Line: 3, AthleteId: "B. V.", Value: "(not shown)", Reason: "'(not shown)' is not a plain number." } && h.Remedy == "Write the number only; the unit stands in the head. The command check shows where it stands and what.");
        Assert.Contains(held, h => h is { Line: 4, Value: "(not shown)", Reason: "Athlete '(not shown)' is not in athletes.csv.", Remedy: "Did you mean A. S.? Otherwise add the athlete to athletes.csv. The command check shows where it stands and what." });
        Assert.Contains(held, h => h is { Line: 5, Value: "(not shown)" } && h.Remedy.StartsWith("Did you mean", StringComparison.Ordinal));
        // A number names nobody.
        Assert.Contains(held, h => h is { Line: 6, Value: "12 000", AthleteId: "C. R." });
    }

    [Fact]
    public void Open_Initials_WordsOfTrainingLoseNamesOnly()
    {
        var data = Open("initials");

        Assert.Equal(["speed with (not shown)", "strength", "A. S. and A. S.", "speed"], data.Sessions.Select(s => s.Focus));
        Assert.Contains(data.Notes, n => n is { File: "other-1", Text: "This folder is not part of a season and was not read." });
    }

    [Fact]
    public void Codes_List_NamesEveryAthleteInTheOrderOfTheList()
    {
        var codes = SeasonShelf.Codes(season.Folder);

        Assert.Equal([("P001", "Ada Stone"), ("P002", "Ben Vale"), ("P003", "Cal Reed"), ("P004", "Dan Frost")], codes.Select(c => (c.AthleteId, c.Name)));
        Assert.Equal(Open("codes").Athletes.Select(a => a.Id), codes.Select(c => c.Code).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Open_EarlierSeason_CodesAreOfTheLatestKeyAndStayTheSame()
    {
        using var seasons = new TwoSeasons();
        var alone = SeasonShelf.Codes(seasons.Latest.Folder);
        var joined = SeasonShelf.Codes(seasons.Latest.Folder, seasons.Earlier.Folder);

        Assert.Equal(alone, joined.Where(c => c.AthleteId != "P009"));
        Assert.False(File.Exists(Path.Combine(seasons.Earlier.Folder, "share-key.txt")));
        Assert.Equal(joined.Select(c => c.Code).Order(StringComparer.Ordinal), SeasonShelf.Open(seasons.Latest.Folder, seasons.Earlier.Folder, "codes").Athletes.Select(a => a.Id));
    }

    private static List<(DateOnly, string, double)> Values(SeasonData data, string id)
        => [.. data.Days.SelectMany(d => d.Athletes).Where(a => a.AthleteId == id).SelectMany(a => a.Trials).Select(t => (t.Date, t.GetType().Name, t is LiftSet lift ? lift.Load.Kilograms : ((BodyMeasure)t).BodyMass.Kilograms))];
}

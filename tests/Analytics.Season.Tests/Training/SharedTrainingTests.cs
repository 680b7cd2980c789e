using Analytics.Season.Tests.Support;
using Analytics.Season.Training;

namespace Analytics.Season.Tests.Training;

/// <summary>The training settings of a season that is shared without names, and of joined seasons.</summary>
public sealed class SharedTrainingTests : IDisposable
{
    private readonly TemporarySeason season = new TemporarySeason()
        .With("share-key.txt", new string('7', 64))
        .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,ada_squat,400,3\n")
        .With("training/exercises.csv", ShippedTraining.Text("exercises.csv") + "ada_squat,the squat of Ada,squat,maximal_strength,ada_squat,,40,90,,,no,4,,,rack,barbell,,,,,,\nben_hop,hop,jump,reactive_ability,none,,,,,,no,1,1,low,,,,,,,,\nVale_hop,hop,jump,reactive_ability,none,,,,,,no,1,1,low,,,,,,,,\n")
        .With("training/calendar.csv", "date,start,kind,minutes,room,groups\n2026-03-09,07:00,power,60,Hall of Ben,Linebackers\n")
        .With("training/rooms.csv", "room,station,places\nHall of Ben,rack,8\n")
        .With("training/restrictions.csv", "athlete_id,from,to,out,note\nP002,2026-03-01,,ada_squat,Ada fell on him\nP001,2026-03-01,,jump,knee\n")
        .With("training/plan.csv", "date,group,athlete_id,exercise,scheme,keep\n2026-03-09,,P003,ada_squat,strength_5x5_75,keep\n2026-03-09,Linebackers,,back_squat,,\n2026-03-09,,P001,ben_hop,,never\n");

    public void Dispose() => season.Dispose();

    [Theory]
    [InlineData("codes")]
    [InlineData("initials")]
    public void Open_Shared_SaysTheSameOfPlayersWithoutNames(string share)
    {
        var (plain, data) = (season.Read(), SeasonShelf.Open(season.Folder, share: share));
        var training = data.Training;

        Assert.Equal(plain.Training.Exercises.All.Count, training.Exercises.All.Count);
        Assert.Equal(plain.Training.OwnFiles, training.OwnFiles);
        // What the kit calls an exercise stays.
        Assert.Equal("back squat", training.Exercises.Find("back_squat")!.Name);
        Assert.Equal(plain.Training.Exercises.Find("depth_jump"), training.Exercises.Find("depth_jump")! with { Stations = plain.Training.Exercises.Find("depth_jump")!.Stations });
        Assert.DoesNotContain(EveryText.Of(training), t => t.Contains("Ada", StringComparison.OrdinalIgnoreCase) || t.Contains("Ben ", StringComparison.Ordinal) || t.Contains("P00", StringComparison.Ordinal) || t.Contains("fell", StringComparison.Ordinal));
        // What belongs together is still called alike.
        var squat = training.Exercises.All.Single(e => e.Name.StartsWith("the squat of", StringComparison.Ordinal));
        Assert.Equal(squat.Id, training.Restrictions.Single(r => r.ExerciseId is not null).ExerciseId);
        Assert.Equal(squat.Id, squat.Basis.Lift);
        Assert.Equal(squat.Id, data.Days[0].Athletes[0].Of<Analytics.Metrics.Trials.LiftSet>().Single().Lift);
        Assert.Equal(squat.Id, training.Earlier.Single(e => e.SchemeId is not null).ExerciseId);
        Assert.Equal(training.Rooms.Single().Id, training.Sessions.Single().Room);
        Assert.Contains(training.Sessions.Single().Groups[0], data.Athletes.Select(a => a.Group));
        Assert.Equal(training.Restrictions.Select(r => r.AthleteId).Order(StringComparer.Ordinal), training.Restrictions.Select(r => r.AthleteId));
        Assert.All(training.Restrictions, r => Assert.Equal("", r.Note));
        Assert.All(training.Earlier, e => Assert.Equal(share != "codes", e.Place.Contains(" line ", StringComparison.Ordinal)));
        Assert.All(training.Earlier, e => Assert.StartsWith("training/plan.csv", e.Place, StringComparison.Ordinal));
        Assert.Equal(plain.Files.Select(f => f.Path).Order(StringComparer.Ordinal), data.Files.Select(f => f.Path));
    }

    [Fact]
    public void Open_Joined_HasTheTrainingOfTheLatestAndSaysSo()
    {
        using var seasons = new TwoSeasons();
        seasons.Earlier.With("training/restrictions.csv", "athlete_id,from,out\np001,2025-03-01,jump\n");
        seasons.Latest.With("training/restrictions.csv", "athlete_id,from,out\nP002,2026-03-01,sprint\n");

        var data = seasons.Open();

        Assert.Equal("P002", Assert.Single(data.Training.Restrictions).AthleteId);
        Assert.Equal(["restrictions.csv"], data.Training.OwnFiles);
        var note = Assert.Single(data.Notes, n => n.File == "Spring 2025/training");
        Assert.Contains("Restrictions that still hold must stand in the latest", note.Text, StringComparison.Ordinal);
        Assert.Equal(1, data.Files.Single(f => f.Path == "Spring 2025/training/restrictions.csv").Kept);
    }

    [Fact]
    public void Open_ChangedTraining_IsReadAnew()
    {
        Assert.Equal(2, SeasonShelf.Open(season.Folder).Training.Restrictions.Count);
        season.With("training/restrictions.csv", "athlete_id,from,to,out,note\nP002,2026-03-01,,everything,\n");

        Assert.True(Assert.Single(SeasonShelf.Open(season.Folder).Training.Restrictions).IsEverything);
    }
}

using System.Globalization;
using Analytics.Metrics.Load;
using Analytics.Season;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Tests.Demo;

/// <summary>The training written down in the demo season.</summary>
public class SessionTests
{
    private static readonly SeasonData Read = SeasonReader.Read(RepositoryFiles.DemoFolder);

    [Fact]
    public void Committed_Sessions_AreReadWholeAndStaySmall()
    {
        Assert.DoesNotContain(Read.HeldBack, h => h.File == "sessions.csv");
        Assert.InRange(Read.Files.Single(f => f.Path == "sessions.csv").Rows, 1500, 4000);
        Assert.Equal(["", "back_squat bench_press", "power_clean"], Read.Sessions.Select(s => string.Join(' ', s.Exercises.Select(e => e.Lift))).Distinct().Order(StringComparer.Ordinal));
        Assert.All(Read.Sessions, s => Assert.NotNull(s.Work.LoadAu));
    }

    /// <summary>Nobody is given more than he can truly lift so many times.</summary>
    [Fact]
    public void Committed_Loads_AreWithinTheAthletesReach()
    {
        var players = PlayerFactory.Draw(DemoSeason.DemoSeed, new DemoOptions()).ToDictionary(p => p.Id);
        foreach (var session in Read.Sessions)
        {
            var ability = players[session.AthleteId].On(SeasonCalendar.April);
            foreach (var done in session.Exercises)
            {
                var maximum = done.Lift switch { "back_squat" => ability.SquatPounds, "bench_press" => ability.BenchPounds, _ => ability.CleanPounds };
                Assert.InRange(done.Load.Pounds / maximum, 0.62, Simulation.Demo.Testing.LiftTest.Share(done.Repetitions, players[session.AthleteId].RepetitionCost));
            }
        }
    }

    [Fact]
    public void Committed_Doses_CoverSixOfTheWeeksBetweenAprilAndJune()
    {
        var doses = SeasonDoses.Between(Read, SeasonCalendar.TestingDays[SeasonCalendar.April], SeasonCalendar.TestingDays[SeasonCalendar.June], SdDivisor.Sample);
        Assert.Equal(60, doses.Count);
        Assert.All(doses, d => Assert.Equal(8, d.Weeks.Count));
        Assert.Equal(6, doses.Max(d => d.WeeksCovered));
        // Running backs hurt in spring: back on 9, 16 and (after a limited spell) 15 June.
        Assert.Equal([16, 12, 0], new[] { "TC36", "TC37", "TC39" }.Select(id => doses.Single(d => d.AthleteId == id).Sessions));
        Assert.InRange(doses.Average(d => d.SessionLoad.Known), 8000, 9800);
        Assert.All(doses.Where(d => d.Sessions > 0), d => Assert.InRange(d.MeanMonotony!.Value, 0.5, 1.5));
    }

    /// <summary>What is done does not look at gains: minutes, ratings, contacts, sets and repetitions are the same when nobody changes.</summary>
    [Fact]
    public void Of_NobodyChanges_GivesTheSameDose()
    {
        static IEnumerable<string> Rows(ChangePlan plan)
        {
            var players = PlayerFactory.Draw(7, new DemoOptions { Changes = plan });
            return SessionSheet.Of(7, players, []).Rows.Select(r => string.Join(',', r[..^1]));
        }

        Assert.Equal(Rows(ChangePlan.Training), Rows(ChangePlan.None));
    }

    /// <summary>With no relation planted a rank correlation of dose and true gain has p of at most 0.05 in 5 % of seasons: 10 of 200, binomial SD 3.1, three SD each way.</summary>
    [Fact]
    public void DoseAgainstGain_TwoHundredSeasons_FindNothingMoreOftenThanChance()
    {
        var found = 0;
        for (ulong seed = 1; seed <= 200; seed++)
        {
            var players = PlayerFactory.Draw(seed, new DemoOptions { WithMess = false });
            var sheet = SessionSheet.Of(seed, players, []);
            var sets = sheet.Rows.Where(r => r[sheet.Column("lift")] == "back_squat").ToLookup(
                r => r[1], r => int.Parse(r[sheet.Column("sets")], CultureInfo.InvariantCulture) * int.Parse(r[sheet.Column("repetitions")], CultureInfo.InvariantCulture));
            var points = players.Select(p => new DosePoint(p.Id, sets[p.Id].Sum(), p.SeasonGain[TrainedQuality.Squat]));
            if (DoseAgainstChange.Of(new DosePair("repetitions of the squat", "", "squat", ""), points).Rank!.P <= 0.05) found++;
        }

        Assert.InRange(found, 1, 19);
    }

    /// <summary>Training years come from a stream of their own: half years, fitting the age.</summary>
    [Fact]
    public void TrainingYears_FitTheAgeAndAreSometimesNotSaid()
    {
        var players = PlayerFactory.Draw(DemoSeason.DemoSeed, new DemoOptions());
        Assert.All(players, p => Assert.InRange(p.TrainingYears, 0.5, 2026 - p.BirthYear - 10));
        Assert.All(players, p => Assert.Equal(Math.Round(2 * p.TrainingYears), 2 * p.TrainingYears));
        Assert.InRange(Read.Athletes.Count(a => a.TrainingYears is null), 1, 8);
        Assert.All(Read.Athletes.Where(a => a.TrainingYears is not null), a => Assert.Equal(players.Single(p => p.Id == a.Id).TrainingYears, a.TrainingYears));
    }
}

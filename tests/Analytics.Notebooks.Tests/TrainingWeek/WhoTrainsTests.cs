using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>Who trains in a week, who is out, and what goes with him.</summary>
public sealed class WhoTrainsTests
{
    private static readonly DateOnly s_monday = new(2026, 3, 9);
    private static readonly IReadOnlyList<DateOnly> s_days = [s_monday, s_monday.AddDays(2), s_monday.AddDays(4)];

    private static WeekSquad Read(string availability, params Restriction[] restrictions)
    {
        using var season = ReportSeasons.ThreeDays().Write("availability.csv", "athlete_id;from;to;status\n" + availability);
        season.Write("testing/2026-03-02/body.csv", "athlete_id;mass_kg\nP01;101,5\n").Write("testing/2026-01-12/body.csv", "athlete_id;mass_kg\nP01;99\nP02;88\n");
        return PlanPlayers.Of(SeasonReader.Read(season.Folder), new WeekQuestion { Monday = s_monday, Days = s_days, Restrictions = restrictions });
    }

    // Sessions on 9, 11 and 13 March.
    [Fact]
    public void Of_OutOnEverySession_IsNotPlanned()
    {
        var squad = Read("P01;2026-03-09;2026-03-13;injured\nP02;2026-02-20;;ill\nP03;2026-03-01;2026-03-08;injured\n");
        Assert.Equal([("P01", "injured from 9 March to 13 March"), ("P02", "ill since 20 February")], squad.Out.Select(o => (o.AthleteId, o.Reason)));
        Assert.Equal(10, squad.Players.Count);
        Assert.Equal("P03", squad.Players[0].Id);
        Assert.Empty(squad.PartlyOut);
    }

    [Fact]
    public void Of_OutOnOneSession_IsPlannedForTheOthers()
    {
        var squad = Read("P01;2026-03-10;2026-03-12;absent\n");
        Assert.Empty(squad.Out);
        Assert.Equal([("P01", "absent from 10 March to 12 March")], squad.PartlyOut.Select(o => (o.AthleteId, o.Reason)));
        var off = Assert.Single(squad.Players[0].Restrictions);
        Assert.Equal((new DateOnly(2026, 3, 11), new DateOnly(2026, 3, 11), true), (off.From, off.To, off.IsEverything));
    }

    // Out between the sessions only: nothing is missed.
    [Fact]
    public void Of_OutOnADayWithoutASession_IsPlannedForAll()
    {
        var squad = Read("P01;2026-03-10;2026-03-10;absent\n");
        Assert.Empty(squad.PartlyOut);
        Assert.Empty(squad.Players[0].Restrictions);
    }

    [Fact]
    public void Of_LimitedWithNothingListed_DoesNothingOnThoseDays()
    {
        var squad = Read("P01;2026-03-10;2026-03-12;limited\nP02;2026-03-09;2026-03-10;injured\nP02;2026-03-11;2026-03-20;limited\n");
        Assert.Equal(12, squad.Players.Count);
        const string Wait = ": nothing is planned for him until medical staff have listed in training/restrictions.csv what is out";
        Assert.Equal(["limited from 10 March to 12 March" + Wait, "limited from 11 March to 20 March" + Wait], squad.Limited.Select(l => l.Reason));
        Assert.Equal(["P02"], squad.PartlyOut.Select(o => o.AthleteId));
        Assert.Equal([11], squad.Players[0].Restrictions.Where(r => r.IsEverything).Select(r => r.From.Day));
        Assert.Equal([9, 11, 13], squad.Players[1].Restrictions.Where(r => r.IsEverything).Select(r => r.From.Day));
    }

    // What staff have listed as out leaves the rest in, on the days it is for.
    [Fact]
    public void Of_LimitedWithRestrictionsListed_DoesWhatTheyLeave()
    {
        var jumps = new Restriction { AthleteId = "P01", From = s_monday, To = s_monday.AddDays(2), Pattern = MovementPattern.Jump };
        var squad = Read("P01;2026-03-09;2026-03-12;limited\nP02;2026-03-11;2026-03-14;limited\n", jumps, jumps with { AthleteId = "P02" });
        Assert.Equal("limited from 9 March to 12 March: planned with what the restrictions listed leave; medical staff say first whether that is all", squad.Limited[0].Reason);
        Assert.Same(jumps, Assert.Single(squad.Players[0].Restrictions));
        Assert.Equal("limited from 11 March to 14 March: nothing is planned on days for which training/restrictions.csv lists nothing; medical staff say first what he may do", squad.Limited[1].Reason);
        Assert.Equal([13], squad.Players[1].Restrictions.Where(r => r.IsEverything).Select(r => r.From.Day));
    }

    [Fact]
    public void Of_Restrictions_GoWithTheirPlayer()
    {
        var jumps = new Restriction { AthleteId = "P02", From = s_monday, Pattern = MovementPattern.Jump };
        var squad = Read("", jumps);
        Assert.Same(jumps, Assert.Single(squad.Players.Single(p => p.Id == "P02").Restrictions));
        Assert.All(squad.Players.Where(p => p.Id != "P02"), p => Assert.Empty(p.Restrictions));
    }

    // Squat singles of 150 + 4 i kg and a sway of at most 2.5 kg: P05 lifted 167.5 or so on the latest day.
    [Fact]
    public void Of_LatestMassAndLifts_AreThere()
    {
        var squad = Read("");
        Assert.Equal([101.5, 88, null], squad.Players.Take(3).Select(p => p.BodyMass?.Kilograms));
        var squat = Assert.Single(squad.Players.Single(p => p.Id == "P05").Maxima).Value;
        Assert.Equal(("back_squat", "measured", new DateOnly(2026, 3, 2)), (squat.Lift, squat.HowMade, squat.Date));
        Assert.InRange(squat.Kilograms, 167.5, 172.5);
        Assert.True(squat.Range!.Value.Contains(squat.Kilograms));
        Assert.Null(squat.HurtSince);
    }

    // Hurt after the test and back: the load rules want to know. One that begins after the week has not happened yet.
    [Fact]
    public void Of_HurtAfterTheTest_TravelsWithTheLifts()
    {
        var squad = Read("P05;2026-03-04;2026-03-06;injured\nP06;2026-04-04;2026-04-06;injured\n");
        Assert.Equal(new DateOnly(2026, 3, 4), squad.Players.Single(p => p.Id == "P05").Maxima["back_squat"].HurtSince);
        Assert.Null(squad.Players.Single(p => p.Id == "P06").Maxima["back_squat"].HurtSince);
    }
}

using Analytics.Metrics.Trials;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests;

public sealed class SeasonReaderTests
{
    private const string Day = "testing/2026-03-02/";

    [Fact]
    public void Read_EveryTable_GivesTypedTrials()
    {
        using var season = new TemporarySeason()
            .With(Day + "body.csv", "athlete_id,mass_lb,stature_in\nP001,225,72.5\n")
            .With(Day + "lifts.csv", "athlete_id,lift,set,load_lb,reps,rir,bar_rise_cm,pull_time_s\nP001,back_squat,1,405,3,1,,\nP001,Power Clean,1,225,2,,85,0.62\n")
            .With(Day + "jumps.csv", "athlete_id,jump,method,attempt,height_in,distance_in,flight_ms,contact_ms,obstacle_cm,push_off_cm\nP001,countermovement,,1,26.5,,741,,,38\nP001,standing-long,tape,1,,112,,,,\nP001,drop,force plate,1,,,520,190,30,\n")
            .With(Day + "sprints.csv", "athlete_id,attempt,timing,start,t_10yd_s,t_5yd_s,t_40yd_s\nP001,1,,,1.62,1.02,4.71\n")
            .With(Day + "agility.csv", "athlete_id,test,attempt,timing,side,time_s\nP001,pro_agility,1,Hand,Left,4.31\n")
            .With(Day + "throws.csv", "athlete_id,throw,attempt,ball_kg,distance_m,side\nP001,rotational,1,4,9.6,right\n")
            .With(Day + "stairs.csv", "athlete_id,attempt,rise_cm,time_s\nP001,1,104.4,0.55\n");

        var data = season.Read();

        Assert.Empty(data.HeldBack);
        var day = Assert.Single(data.Days);
        var athlete = Assert.Single(day.Athletes);
        Assert.Equal(new DateOnly(2026, 3, 2), athlete.Date);
        // 225 lb x 0.45359237 = 102.05828325 kg, by the 1959 definition of the pound.
        Assert.Equal(102.05828325, athlete.BodyMass!.Value.Kilograms, 9);
        Assert.Equal(1.8415, athlete.Stature!.Value.Metres, 9);
        var squat = athlete.Of<LiftSet>().First();
        Assert.Equal(("back_squat", 3, 1.0, 183.70490985), (squat.Lift, squat.Repetitions, squat.RepetitionsInReserve, Math.Round(squat.Load.Kilograms, 8)));
        Assert.Equal(new TrialSource(Day + "lifts.csv", 2), squat.Source);
        Assert.Equal("power_clean", athlete.Of<LiftSet>().Last().Lift);
        Assert.Equal([JumpKind.Countermovement, JumpKind.StandingLong, JumpKind.Drop], athlete.Of<JumpTrial>().Select(j => j.Kind));
        Assert.Equal([JumpMethod.Mat, JumpMethod.Tape, JumpMethod.ForcePlate], athlete.Of<JumpTrial>().Select(j => j.Method));
        var sprint = Assert.Single(athlete.Of<SprintTrial>());
        Assert.Equal([1.02, 1.62, 4.71], sprint.Splits.Select(s => s.Time.Seconds));
        Assert.Equal([4.572, 9.144, 36.576], sprint.Splits.Select(s => Math.Round(s.Distance.Metres, 6)));
        Assert.Equal((TimingMethod.Electronic, StartType.ThreePointHand), (sprint.Timing, sprint.Start));
        Assert.Equal((TimingMethod.Hand, Side.Left), (athlete.Of<AgilityTrial>().Single().Timing, athlete.Of<AgilityTrial>().Single().Side));
        Assert.Equal(9.6, athlete.Of<ThrowTrial>().Single().Distance.Metres);
        Assert.Equal(1.044, athlete.Of<StairTrial>().Single().Rise.Metres, 9);
        Assert.Equal(14, data.RowsRead);
    }

    [Fact]
    public void Read_UnknownAthlete_SuggestsNearestIdentifier()
    {
        using var season = new TemporarySeason().With(Day + "body.csv", "athlete_id,mass_lb\nP0O1,225\nP002,220\n");

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal((Day + "body.csv", 2, "athlete_id", "P0O1"), (held.File, held.Line, held.Column, held.Value));
        Assert.Contains("not in athletes.csv", held.Reason, StringComparison.Ordinal);
        Assert.Contains("P001 (Ada Stone)", held.Remedy, StringComparison.Ordinal);
    }
}

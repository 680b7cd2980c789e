using Analytics.Metrics.Load;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Load;

public class TrainingDoseTests
{
    // A Wednesday and a Wednesday five weeks on: four whole weeks lie between, from Monday 2 March to Sunday 29 March.
    private static readonly DateOnly From = new(2026, 2, 25), To = new(2026, 4, 1), Monday = new(2026, 3, 2);

    [Fact]
    public void Of_Period_HoldsTheFirstDayAndNotTheLast()
    {
        var dose = Dose([WeekLoadTests.Session(From.AddDays(-1), 300), WeekLoadTests.Session(From, 100), WeekLoadTests.Session(To.AddDays(-1), 200), WeekLoadTests.Session(To, 300)]);
        Assert.Equal((2, 300d), (dose.Sessions, dose.SessionLoad.Value));
    }

    [Fact]
    public void Of_Weeks_AreWholeOnesOnly()
    {
        var dose = Dose([WeekLoadTests.Session(From, 100), WeekLoadTests.Session(Monday, 300), WeekLoadTests.Session(Monday.AddDays(14), 300)]);
        Assert.Equal([Monday, Monday.AddDays(7), Monday.AddDays(14), Monday.AddDays(21)], dose.Weeks.Select(w => w.Monday));
        Assert.Equal((2, 2), (dose.WeeksCovered, dose.WeeksComputable));
        Assert.Contains("2 of 4 whole weeks", dose.ToString(), StringComparison.Ordinal);
        Assert.Contains("cannot be told whether the athlete rested or nobody wrote", dose.ToString(), StringComparison.Ordinal);
    }

    // Means of the two weeks of the check table: monotony (1.20073 + 2.26779)/2, strain (2761.67 + 4082.02)/2.
    [Fact]
    public void Of_MeanMonotonyAndStrain_AreOverComputableWeeks()
    {
        double[][] weeks = [[300, 450, 0, 600, 250, 700, 0], [300, 300, 300, 300, 300, 300, 0]];
        var sessions = weeks.SelectMany((w, i) => w.Select((l, d) => (l, day: Monday.AddDays(7 * i + d)))).Where(s => s.l > 0).Select(s => WeekLoadTests.Session(s.day, s.l)).ToList();
        sessions.Add(new(Monday.AddDays(15), Duration.FromMinutes(60)));
        var dose = Dose(sessions);
        Assert.Equal((1.73426, 3421.84), (Math.Round(dose.MeanMonotony!.Value, 5), Math.Round(dose.MeanStrainAu!.Value, 2)));
        Assert.Equal((3, 2), (dose.WeeksCovered, dose.WeeksComputable));
    }

    [Fact]
    public void Of_GapsInTheSheets_MakeLowerBoundsNotZeros()
    {
        var dose = Dose(
        [
            new(Monday, Duration.FromMinutes(60), 5, 40), new(Monday.AddDays(1), Duration.FromMinutes(60), 7), new(Monday.AddDays(2), Duration.FromMinutes(30), null, 20), new(Monday.AddDays(3), null, 6, 0),
        ]);
        Assert.Equal((3, 0.75), (dose.Rated, dose.ShareRated));
        Assert.Equal((720, 2, true, null), (dose.SessionLoad.Known, dose.SessionLoad.Unknown, dose.SessionLoad.IsLowerBound, dose.SessionLoad.Value));
        Assert.Equal((150, 1), (dose.Minutes.Known, dose.Minutes.Unknown));
        Assert.Equal((60, 1), (dose.JumpContacts.Known, dose.JumpContacts.Unknown));
        Assert.Contains("at least: 2 of 4 sessions without rating or minutes", dose.ToString(), StringComparison.Ordinal);
        Assert.Null(dose.Amount(DoseMeasure.JumpContacts));
        // Three of four sessions speak: 60/0.75.
        Assert.Equal(80, dose.Amount(DoseMeasure.JumpContacts, 0.75)!.Value, 9);
        Assert.Null(dose.Amount(DoseMeasure.JumpContacts, 0.8));
    }

    [Fact]
    public void Of_Lifts_AreSummedAndNoneWrittenIsNotKnown()
    {
        SessionWork With(int day, string lift, double kilograms) => new(Monday.AddDays(day)) { Exercises = [new(lift, 5, 5, Mass.FromKilograms(kilograms))] };
        var dose = Dose([With(0, "back_squat", 140), With(0, "bench_press", 100), With(7, "back_squat", 142)]);
        Assert.Equal((7050d, 9550d), (Math.Round(dose.Volume!.Of("back_squat")!.VolumeLoad.Kilograms, 9), Math.Round(dose.Amount(DoseMeasure.VolumeLoad)!.Value, 9)));
        var none = Dose([WeekLoadTests.Session(Monday, 300)]);
        Assert.Null(none.Volume);
        Assert.Null(none.Amount(DoseMeasure.VolumeLoad));
        Assert.Contains("not known: no sets written down", none.ToString(), StringComparison.Ordinal);
    }

    // Two whole weeks with 3500 and 7000 kg and one with a session but no set; sets before the first Monday and after the last Sunday are in no week.
    [Fact]
    public void Of_VolumeOfAWeek_LeavesOutWhatIsInNoWholeWeek()
    {
        SessionWork Squats(DateOnly day, int sets) => new(day) { Exercises = [new("back_squat", sets, 5, Mass.FromKilograms(140))] };
        var dose = Dose([Squats(From, 20), Squats(Monday, 5), Squats(Monday.AddDays(9), 10), WeekLoadTests.Session(Monday.AddDays(14), 300), Squats(To.AddDays(-1), 20)]);
        Assert.Equal(3, dose.WeeksCovered);
        Assert.Equal(3500, dose.MeanVolumeKilograms!.Value, 9);
        Assert.Equal(38500, dose.Volume!.Total.Kilograms, 9);
        Assert.Null(Dose([WeekLoadTests.Session(Monday, 300)]).MeanVolumeKilograms);
        Assert.Null(Dose([Squats(From, 5)]).MeanVolumeKilograms);
    }

    [Fact]
    public void Of_NoSessions_IsNotKnownInEveryMeasure()
    {
        var dose = Dose([]);
        Assert.All(Enum.GetValues<DoseMeasure>(), m => Assert.Null(dose.Amount(m, 0.5)));
        Assert.Null(dose.ShareRated);
        Assert.Contains("not known: no session written down", dose.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_DaysTheWrongWayRound_IsRefused()
        => Assert.Contains("2026-04-01 to 2026-02-25; the second day must be later", Assert.Throws<ArgumentException>(() => TrainingDose.Of("P001", [], To, From, SdDivisor.Sample)).Message, StringComparison.Ordinal);

    private static TrainingDose Dose(IEnumerable<SessionWork> sessions) => TrainingDose.Of("P001", sessions, From, To, SdDivisor.Sample);
}

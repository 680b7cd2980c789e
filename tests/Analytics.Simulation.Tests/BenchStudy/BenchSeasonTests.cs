using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Simulation.BenchStudy.Squads;
using Analytics.Simulation.Demo;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.Tests.BenchStudy;

/// <summary>A squad drawn without files holds the trials that the season's reader finds in the files of the same squad.</summary>
public class BenchSeasonTests
{
    private static readonly int[] s_days = [0, 1, 2, 3, 4];

    [Fact]
    public void Draw_WithoutMess_IsWhatTheReaderReads()
    {
        var read = SeasonChain.Run(0, 71, new DemoOptions { WithMess = false });
        var drawn = BenchSeason.Draw(71, s_days, withMess: false);
        var expected = Lines(read.Days);
        // 60 players: 3 to 4 lifts, 9 to 12 jumps, 2 sprints and more on each of five days.
        Assert.True(expected.Count > 6000, $"{expected.Count}");
        Assert.Equal(expected, Lines(drawn.Days));
    }

    [Fact]
    public void Draw_WithMess_IsWhatTheReaderReadsButForTypingErrors()
    {
        var read = SeasonChain.Run(0, 72, new DemoOptions());
        var spoilt = read.Truth.Errors.Select(e => e.AthleteId).ToHashSet(StringComparer.Ordinal);
        // Ten slips, each in another player's row; the one in the table of film has no place here.
        Assert.Equal(9, spoilt.Count);
        List<IReadOnlyList<AthleteDay>> Clean(IReadOnlyList<IReadOnlyList<AthleteDay>> days) => [.. days.Select(d => (IReadOnlyList<AthleteDay>)[.. d.Where(a => !spoilt.Contains(a.AthleteId))])];
        Assert.Equal(Lines(Clean(read.Days)), Lines(Clean(BenchSeason.Draw(72, s_days).Days)));
    }

    [Fact]
    public void Draw_TwoDaysOnly_GivesTheSameTwoDays()
        => Assert.Equal(Lines([.. BenchSeason.Draw(73, s_days).Days.Take(2)]), Lines(BenchSeason.Draw(73, [0, 1]).Days));

    [Fact]
    public void Squad_Choices_TakeTheFirstPlayersAndSpreadTheRetested()
    {
        var season = BenchSeason.Draw(74, [0, 1]);
        var twelve = season.Squad(SquadChoice.Twelve);
        Assert.Equal(12, twelve.Profile.Squad.Count);
        Assert.All(twelve.Days.SelectMany(d => d), d => Assert.True(string.CompareOrdinal(d.AthleteId, "TC12") <= 0));
        var ten = season.Squad(SquadChoice.TenRetested);
        Assert.Equal(10, ten.Days[1].Count);
        Assert.True(ten.Days[1].Select(d => ten.Profile.Squad.Single(m => m.Id == d.AthleteId).Group).Distinct().Count() >= 6);
        Assert.Single(season.Squad(SquadChoice.NoRetest).Days);
        Assert.Empty(season.Squad(SquadChoice.NoRetest).Profile.Retests);
    }

    private static List<string> Lines(IReadOnlyList<IReadOnlyList<AthleteDay>> days) => [.. days.SelectMany(d => d).SelectMany(d => d.Trials.Select(t => $"{d.AthleteId} {Text(t)}").Append(Text(d))).Order(StringComparer.Ordinal)];

    // Ten figures: one reader multiplies by 0.001 where the other divides by 1000.
    private static string N(double? v) => v?.ToString("G10", CultureInfo.InvariantCulture) ?? "-";

    private static string Text(AthleteDay d) => FormattableString.Invariant($"{d.AthleteId} {d.Date:yyyy-MM-dd} mass {N(d.BodyMass?.Kilograms)} of {d.BodyMassDate:yyyy-MM-dd} stature {N(d.Stature?.Metres)}");

    private static string Text(Trial t) => FormattableString.Invariant($"{t.Date:yyyy-MM-dd} {t.Attempt} {t.Tester} ") + t switch
    {
        BodyMeasure b => $"body {N(b.BodyMass.Kilograms)}",
        LiftSet s => $"{s.Lift} {N(s.Load.Kilograms)} x {s.Repetitions} reserve {N(s.RepetitionsInReserve)}",
        JumpTrial j => $"{j.Kind} {j.Method} {N(j.Height?.Metres)} {N(j.Distance?.Metres)} {N(j.FlightTime?.Seconds)} {N(j.ContactTime?.Seconds)} {N(j.ObstacleHeight?.Metres)}",
        SprintTrial r => $"{r.Timing} {r.Start} {string.Join(' ', r.Splits.Select(p => $"{N(p.Distance.Metres)}:{N(p.Time.Seconds)}"))}",
        AgilityTrial a => $"{a.Test} {a.Timing} {a.Side} {N(a.Time.Seconds)}",
        ThrowTrial w => $"{w.Throw} {N(w.Ball.Kilograms)} {N(w.Distance.Metres)}",
        StairTrial u => $"stairs {N(u.Rise.Metres)} {N(u.Time.Seconds)}",
        _ => throw new InvalidOperationException(t.GetType().Name),
    };
}

using System.Globalization;
using System.Text;
using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Checks;

/// <summary>Values within the allowed range, but in another unit than the head says.</summary>
public sealed class UnitMixUpsTests
{
    private static readonly string[] Days = ["2026-02-02", "2026-03-02", "2026-04-06", "2026-05-04"];

    // Twelve athletes of two groups; pounds, invented.
    private static readonly double[] Masses = [310, 305, 298, 315, 301, 290, 205, 212, 221, 198, 208, 216];

    private static TemporarySeason Squad() => new TemporarySeason().With("athletes.csv",
        "athlete_id,name,position,group\n" + string.Concat(Enumerable.Range(1, 12).Select(i => $"A{i},Name {i},X,{(i <= 6 ? "Line" : "Backs")}\n")));

    private static string Body(Func<int, string> mass, string head = "mass_lb")
        => $"athlete_id,{head}\n" + string.Concat(Enumerable.Range(1, 12).Select(i => $"A{i},{mass(i)}\n"));

    private static string Text(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Pounds(int i) => Text(Masses[i - 1]);

    private static string Kilograms(int i) => Text(Masses[i - 1] * 0.45359237);

    private static string Path(int day, string table) => $"testing/{Days[day]}/{table}.csv";

    [Fact]
    public void Read_OneMassInKilograms_IsHeldBackAgainstOwnHistory()
    {
        using var season = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), Body(i => i is 7 ? "93" : Pounds(i)));

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal((Path(1, "body"), 8, "mass_lb", "93", "A7"), (held.File, held.Line, held.Column, held.Value, held.AthleteId));
        Assert.Equal("93 lb is 0.45 times what this athlete does otherwise; it looks like kg.", held.Reason);
        // 93 kg / 0.45359237 kg per lb = 205.03 lb.
        Assert.Equal("If it is kg, write 205.03 (93 kg in lb). If it is right, write yes in a column 'checked'.", held.Remedy);
    }

    [Fact]
    public void Read_OneMassInKilogramsOnTheFirstDay_IsHeldBackAgainstTheSquad()
    {
        using var season = Squad().With(Path(0, "body"), Body(i => i is 2 ? "138" : Pounds(i)));

        // 138 lb is a possible mass; 138 kg is that of this squad's linemen.
        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("A2", "138 lb is 0.46 times the usual value of the squad; it looks like kg."), (held.AthleteId, held.Reason));
    }

    [Fact]
    public void Read_WrongFirstDay_IsFoundByTheSquadNotBlamedOnTheSecond()
    {
        using var season = Squad().With(Path(0, "body"), Body(i => i is 7 ? "93" : Pounds(i))).With(Path(1, "body"), Body(Pounds));

        Assert.Equal(Path(0, "body"), Assert.Single(season.Read().HeldBack).File);
    }

    [Fact]
    public void Read_WholeDayInKilograms_IsHeldBackOnce()
    {
        using var season = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), Body(Kilograms)).With(Path(2, "body"), Body(Pounds));

        var data = season.Read();

        var held = Assert.Single(data.HeldBack);
        Assert.Equal((Path(1, "body"), 1, "mass_lb", 12), (held.File, held.Line, held.Column, held.Rows));
        Assert.Equal("All 12 values are about 0.45 times those of the same athletes on other days; the column looks like kg.", held.Reason);
        Assert.StartsWith("If it is kg, name the column mass_kg.", held.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_TwoDaysInDifferentUnits_DoubtsTheLater()
    {
        using var season = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), Body(i => Text(Masses[i - 1] * 0.6)));
        using var mixed = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), Body(Kilograms));

        // No unit is 0.6 of another: left alone. Kilograms are told.
        Assert.Empty(season.Read().HeldBack);
        Assert.Equal((Path(1, "body"), 12), mixed.Read().HeldBack.Select(h => (h.File, h.Rows)).Single());
    }

    [Fact]
    public void Read_RightColumnInKilograms_IsKept()
    {
        using var season = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), Body(Kilograms, "mass_kg"));

        Assert.Empty(season.Read().HeldBack);
    }

    [Fact]
    public void Read_ManyDays_StillFindsTheOneSlip()
    {
        var season = Squad();
        using (season)
        {
            for (var day = 0; day < 10; day++) season.With($"testing/2026-03-{10 + day}/body.csv", Body(i => day is 6 && i is 3 ? "135" : Pounds(i)));

            Assert.Equal(("testing/2026-03-16/body.csv", 4), season.Read().HeldBack.Select(h => (h.File, h.Line)).Single());
        }
    }

    [Fact]
    public void Read_MarkedAsChecked_IsKept()
    {
        using var season = Squad().With(Path(0, "body"), Body(Pounds)).With(Path(1, "body"), "athlete_id,mass_lb,checked\nA7,93,yes\nA8,95,no\n");

        Assert.Equal("A8", Assert.Single(season.Read().HeldBack).AthleteId);
    }

    private static string Lifts(string head, Func<int, IEnumerable<(double Load, int Reps)>> sets)
    {
        var text = new StringBuilder($"athlete_id,lift,set,{head},reps\n");
        for (var i = 1; i <= 8; i++)
            foreach (var (set, number) in sets(i).Select((s, n) => (s, n + 1))) text.Append(CultureInfo.InvariantCulture, $"A{i},back_squat,{number},{set.Load:0.#},{set.Reps}\n");
        return text.ToString();
    }

    [Fact]
    public void Read_PoundsInAKilogramColumn_AreHeldBack()
    {
        // Squats of 160 to 195 kg; athlete 3 is entered as 405 lb.
        using var season = Squad().With(Path(0, "lifts"), Lifts("load_kg", i => [(i is 3 ? 405 : 155 + 5 * i, 3)]));

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("load_kg", "405", "A3"), (held.Column, held.Value, held.AthleteId));
        Assert.EndsWith("it looks like lb.", held.Reason, StringComparison.Ordinal);
        // 405 lb x 0.45359237 = 183.70 kg.
        Assert.StartsWith("If it is lb, write 183.7 (405 lb in kg).", held.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LightSetsBeforeAHeavyOne_AreKept()
    {
        using var season = Squad()
            .With(Path(0, "lifts"), Lifts("load_lb", i => [(135, 5), (225, 5), (315, 3), (350 + 10 * i, 1)]))
            .With(Path(1, "lifts"), Lifts("load_lb", i => [(135, 5), (360 + 10 * i, 1)]));

        Assert.Empty(season.Read().HeldBack);
    }

    [Fact]
    public void Read_DayOfSetsInKilogramsInAPoundColumn_IsHeldBack()
    {
        using var season = Squad()
            .With(Path(0, "lifts"), Lifts("load_lb", i => [(315, 3), (350 + 10 * i, 1)]))
            .With(Path(1, "lifts"), Lifts("load_lb", i => i is 4 ? [(145, 3), (175, 1)] : [(315, 3), (360 + 10 * i, 1)]));

        Assert.Equal([("A4", "145"), ("A4", "175")], season.Read().HeldBack.Select(h => (h.AthleteId, h.Value)));
    }

    private static string Jumps(string head, Func<int, double> height)
        => $"athlete_id,jump,method,attempt,{head}\n" + string.Concat(Enumerable.Range(1, 8).Select(i => $"A{i},countermovement,mat,1,{Text(height(i))}\n"));

    [Fact]
    public void Read_InchesInACentimetreColumn_AreHeldBack()
    {
        // Jumps of 62 to 76 cm; 27 in the same column is 27 in = 68.6 cm.
        using var season = Squad().With(Path(0, "jumps"), Jumps("height_cm", i => 60 + 2 * i)).With(Path(1, "jumps"), Jumps("height_cm", i => i is 4 ? 27 : 60 + 2 * i));

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("A4", "27"), (held.AthleteId, held.Value));
        Assert.Contains("it looks like in", held.Reason, StringComparison.Ordinal);
        Assert.Contains("write 68.58 (27 in in cm)", held.Remedy, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WholeDayInInchesAgainstFlightTimes_IsHeldBack()
    {
        // 0.72 s of flight is 9.80665 x 0.72^2 / 8 = 0.635 m.
        using var season = Squad()
            .With(Path(0, "jumps"), "athlete_id,jump,method,attempt,flight_ms\n" + string.Concat(Enumerable.Range(1, 8).Select(i => $"A{i},countermovement,mat,1,{715 + i}\n")))
            .With(Path(1, "jumps"), Jumps("height_cm", i => 25 + 0.1 * i));

        Assert.Equal((Path(1, "jumps"), 8), season.Read().HeldBack.Select(h => (h.File, h.Rows)).Single());
    }

    [Fact]
    public void Read_FeetInAMetreColumn_AreHeldBack()
    {
        // Throws near 6.2 m; 20.3 is within the allowed range, and 20.3 ft = 6.19 m.
        using var season = Squad().With(Path(0, "throws"), "athlete_id,throw,attempt,ball_kg,distance_m\n" + string.Concat(Enumerable.Range(1, 8).Select(i => $"A{i},seated_chest,1,5,{(i is 2 ? "20.3" : Text(5.8 + 0.1 * i))}\n")));

        var held = Assert.Single(season.Read().HeldBack);

        Assert.Equal(("A2", "distance_m"), (held.AthleteId, held.Column));
        Assert.Contains("it looks like ft", held.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_RealGainsAndDifferencesBetweenAthletes_AreKept()
    {
        using var season = Squad()
            .With(Path(0, "lifts"), Lifts("load_lb", i => [(200 + 50 * i, 1)]))
            .With(Path(1, "lifts"), Lifts("load_lb", i => [((200 + 50 * i) * 1.25, 1)]))
            .With(Path(0, "jumps"), Jumps("height_in", i => 18 + 2.5 * i))
            .With(Path(1, "jumps"), Jumps("height_in", i => (18 + 2.5 * i) * 1.2));

        Assert.Empty(season.Read().HeldBack);
    }
}

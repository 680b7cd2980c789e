using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.BenchStudy.Squads;

/// <summary>
/// The typed trials of a generated testing day straight from its sheets, without files: what the season's reader makes of the same day, but for typing errors,
/// which are not in it. A test holds the two against each other.
/// </summary>
internal static class SheetTrials
{
    private static readonly int[] s_gateYards = [5, 10, 20, 40];

    public static IEnumerable<Trial> Of(TestingDay day) => day.Sheets.SelectMany(sheet => sheet.Rows.Select(cells => Trial(day.Date, new SheetRow(sheet, cells)))).OfType<Trial>();

    private static Trial? Trial(DateOnly date, SheetRow row) => row.Sheet.Name switch
    {
        "body" => new BodyMeasure { AthleteId = row.Athlete, Date = date, BodyMass = Mass.FromPounds(row.Number("mass_lb")!.Value) },
        "lifts" => new LiftSet
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("set"), Lift = row["lift"], Load = Mass.FromPounds(row.Number("load_lb")!.Value),
            Repetitions = row.Whole("reps"), RepetitionsInReserve = row.Number("rir"),
        },
        "jumps" => new JumpTrial
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("attempt"), Tester = row.Tester, Kind = Kind(row["jump"]), Method = row["method"] == "tape" ? JumpMethod.Tape : JumpMethod.Mat,
            Height = row.Inches("height_in"), Distance = row.Inches("distance_in"), FlightTime = row.Milliseconds("flight_ms"), ContactTime = row.Milliseconds("contact_ms"),
            ObstacleHeight = row.Inches("obstacle_in"),
        },
        "sprints" => new SprintTrial
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("attempt"), Tester = row.Tester, Timing = Timing(row["timing"]), Start = StartType.ThreePointHand,
            Splits = [.. s_gateYards.Select(y => (Yards: y, Time: row.Number(string.Create(CultureInfo.InvariantCulture, $"t_{y}yd_s")))).Where(s => s.Time is not null)
                .Select(s => new Split(Length.FromYards(s.Yards), Duration.FromSeconds(s.Time!.Value)))],
        },
        "agility" => new AgilityTrial
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("attempt"), Tester = row.Tester, Test = row["test"], Timing = Timing(row["timing"]),
            Side = row["side"] == "left" ? Side.Left : Side.Right, Time = Duration.FromSeconds(row.Number("time_s")!.Value),
        },
        "throws" => new ThrowTrial
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("attempt"), Tester = row.Tester, Throw = row["throw"], Ball = Mass.FromKilograms(row.Number("ball_kg")!.Value),
            Distance = Length.FromMetres(row.Number("distance_m")!.Value),
        },
        "stairs" => new StairTrial
        {
            AthleteId = row.Athlete, Date = date, Attempt = row.Whole("attempt"), Rise = Length.FromCentimetres(row.Number("rise_cm")!.Value), Time = Duration.FromSeconds(row.Number("time_s")!.Value),
        },
        // Film is no part of the bench study: it needs points and a camera.
        "contact" => null,
        _ => throw new ArgumentException($"The sheet '{row.Sheet.Name}' is not known here; add it to {nameof(SheetTrials)}.", nameof(row)),
    };

    private static TimingMethod Timing(string word) => word == "hand" ? TimingMethod.Hand : TimingMethod.Electronic;

    private static JumpKind Kind(string word) => word switch
    {
        "countermovement" => JumpKind.Countermovement,
        "drop" => JumpKind.Drop,
        "hurdle" => JumpKind.Hurdle,
        "standing_long" => JumpKind.StandingLong,
        _ => throw new ArgumentException($"The jump '{word}' is not known here; add it to {nameof(SheetTrials)}.", nameof(word)),
    };
}

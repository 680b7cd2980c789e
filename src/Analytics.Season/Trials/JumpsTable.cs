using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>jumps.csv</c>: vertical and long jumps.</summary>
internal sealed class JumpsTable : TrialTable
{
    public static readonly Column Jump = new("jump", needed: true);

    public static readonly Column Method = new("method");

    // Limits outside which a value is a slip; common practice, no source.
    public static readonly QuantityColumn Height = new("height", UnitSets.Heights, 0.05, 1.3);

    public static readonly QuantityColumn Distance = new("distance", UnitSets.Distances, 0.5, 4.5);

    public static readonly QuantityColumn Flight = new("flight", UnitSets.ShortTimes, 0.2, 1.05);

    public static readonly QuantityColumn Contact = new("contact", UnitSets.ShortTimes, 0.06, 1.5);

    public static readonly QuantityColumn Obstacle = new("obstacle", UnitSets.Heights, 0.05, 1.5);

    public static readonly QuantityColumn PushOff = new("push_off", UnitSets.Rises, 0.1, 0.9);

    public override string Name => "jumps";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Jump, Method, Attempt, Height, Distance, Flight, Contact, Obstacle, PushOff];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        row.NeedText(Jump, "jump");
        var kind = row.Word(Jump, Words.Jump) ?? default;
        var method = row.NeedWord(Method, Words.Method, kind is JumpKind.StandingLong ? JumpMethod.Tape : place.Settings.DefaultJumpMethod, "jump_method");
        double? height = row.Quantity(Height), distance = row.Quantity(Distance), flight = row.Quantity(Flight);
        double? contact = row.Quantity(Contact), obstacle = row.Quantity(Obstacle), pushOff = row.Quantity(PushOff);
        if (row.Faults.Count is 0) CheckResult(row, kind, method, height, distance, flight);
        var attempt = place.Numbers.Of(row, Attempt, place.AthleteId, "", (int)kind * 16 + (int)method);
        return row.Faults.Count > 0 ? null : new JumpTrial
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Kind = kind,
            Method = method,
            Height = Metres(height),
            Distance = Metres(distance),
            FlightTime = Seconds(flight),
            ContactTime = Seconds(contact),
            ObstacleHeight = Metres(obstacle),
            PushOffDistance = Metres(pushOff),
        };
    }

    private static void CheckResult(RowCells row, JumpKind kind, JumpMethod method, double? height, double? distance, double? flight)
    {
        if (kind is JumpKind.StandingLong)
        {
            if (distance is null) row.Fault(row.Head.HeadOf(Distance), "", "a standing long jump has no distance", "Fill in distance_in, distance_cm, distance_m or distance_ft.");
            return;
        }

        if (height is null && flight is null)
            row.Fault(row.Head.HeadOf(Height), "", "the jump has neither a height nor a flight time", "Fill in the height or the flight time, or delete the row.");
        if (height is { } rise && flight is { } time && method is JumpMethod.Mat or JumpMethod.Video) CheckFlight(row, rise, time);
    }

    /// <summary>Mats and video get the height from the flight time, g t²/8, so the two must agree but for rounding and a different g.</summary>
    private static void CheckFlight(RowCells row, double height, double flight)
    {
        var rise = UnitFactors.StandardGravity * flight * flight / 8;
        if (Math.Abs(rise - height) <= 0.15 * height + 0.01) return;
        var place = row.Head[Height][0];
        row.Fault(place.Head, row.Text(Height), $"the flight time of {CellText.Number(flight * 1000)} ms gives a height of {CellText.Number(Math.Round(rise / place.Unit!.ToSi, 2))} {place.Unit.Symbol}, not {CellText.Number(height / place.Unit.ToSi)}", "Correct the height or the flight time; one of them, or its unit, is wrong.");
    }

    private static Length? Metres(double? value) => value is { } metres ? Length.FromMetres(metres) : null;

    private static Duration? Seconds(double? value) => value is { } seconds ? Duration.FromSeconds(seconds) : null;
}

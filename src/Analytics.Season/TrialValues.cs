using System.Globalization;
using Analytics.Metrics.Trials;

namespace Analytics.Season;

/// <summary>One value of a trial, for the long form of a data frame.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Kind">Kind of trial: the name of its table.</param>
/// <param name="Test">Lift, jump, throw or test.</param>
/// <param name="Measure">What was measured.</param>
/// <param name="Value">The value.</param>
/// <param name="Unit">Its unit.</param>
internal sealed record TrialRow(Trial Trial, string Kind, string Test, string Measure, double Value, string Unit);

/// <summary>Takes trials apart into single values.</summary>
internal static class TrialValues
{
    /// <summary>The values of a trial that are there.</summary>
    public static IEnumerable<TrialRow> Of(Trial trial) => trial switch
    {
        BodyMeasure t => Rows(t, "body", "", ("body_mass", t.BodyMass.Kilograms, "kg"), ("stature", t.Stature?.Metres, "m")),
        LiftSet t => Rows(t, "lifts", t.Lift, ("load", t.Load.Kilograms, "kg"), ("repetitions", t.Repetitions, ""), ("repetitions_in_reserve", t.RepetitionsInReserve, ""), ("bar_rise", t.BarRise?.Metres, "m"), ("pull_time", t.PullTime?.Seconds, "s")),
        JumpTrial t => Rows(t, "jumps", $"{Word(t.Kind)}, {Word(t.Method)}", ("height", t.Height?.Metres, "m"), ("distance", t.Distance?.Metres, "m"), ("flight_time", t.FlightTime?.Seconds, "s"), ("contact_time", t.ContactTime?.Seconds, "s"), ("obstacle_height", t.ObstacleHeight?.Metres, "m"), ("push_off_distance", t.PushOffDistance?.Metres, "m")),
        SprintTrial t => Rows(t, "sprints", $"{Word(t.Timing)}, {Word(t.Start)}", [.. t.Splits.Select(s => (string.Create(CultureInfo.InvariantCulture, $"time_at_{s.Distance.Metres:0.###}_m"), (double?)s.Time.Seconds, "s"))]),
        AgilityTrial t => Rows(t, "agility", $"{t.Test}, {Word(t.Timing)}", ("time", t.Time.Seconds, "s")),
        ThrowTrial t => Rows(t, "throws", t.Throw, ("ball", t.Ball.Kilograms, "kg"), ("distance", t.Distance.Metres, "m")),
        StairTrial t => Rows(t, "stairs", "", ("rise", t.Rise.Metres, "m"), ("time", t.Time.Seconds, "s")),
        ContactTrial t => Rows(t, "contact", t.Clip, [.. t.Readings.Select(r => (t.Readings.Count is 1 ? "time_to_contact" : $"time_to_contact_reading_{r.Number}", (double?)t.Clock.Between(r.FirstMovement.Frame, r.Contact.Frame).Seconds, "s")), ("gap", t.Gap?.Metres, "m")]),
        _ => [],
    };

    private static IEnumerable<TrialRow> Rows(Trial trial, string kind, string test, params (string Measure, double? Value, string Unit)[] values)
        => values.Where(v => v.Value is not null).Select(v => new TrialRow(trial, kind, test, v.Measure, v.Value!.Value, v.Unit));

    /// <summary>"ThreePointHand" as "three point hand".</summary>
    private static string Word<T>(T value) where T : struct, Enum
        => string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) && i > 0 ? $" {char.ToLowerInvariant(c)}" : $"{char.ToLowerInvariant(c)}"));
}

using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Jumping;
using Analytics.Metrics.Strength;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>The inputs that a season's trials hold. Readings of film are not among them: their errors are those of frames and points, see docs/methods/contact.md.</summary>
internal static class InputFields
{
    /// <summary>All inputs that occur in some days, in a fixed order.</summary>
    /// <param name="days">The days.</param>
    /// <param name="library">Metrics as the season is read with; the error of an input is that of its library metric where there is one.</param>
    public static IReadOnlyList<InputField> Of(IReadOnlyList<AthleteDay> days, IReadOnlyList<Metric> library)
    {
        var trials = days.SelectMany(d => d.Trials).ToList();
        Metric? Known(string id) => library.FirstOrDefault(m => m.Id == id);
        return
        [
            new("body mass", Known("body_mass") ?? BodyMetrics.BodyMass, (day, f) => day with { BodyMass = day.BodyMass * f, Trials = Change<BodyMeasure>(day, b => b with { BodyMass = b.BodyMass * f }) }),
            .. Names(trials.OfType<LiftSet>(), s => s.Lift).SelectMany(lift => Lift(lift, Known)),
            .. Names(trials.OfType<JumpTrial>(), j => j.Kind.ToString()).SelectMany(kind => Jump(Enum.Parse<JumpKind>(kind), Known)),
            .. trials.OfType<SprintTrial>().SelectMany(s => s.Splits).Select(s => Math.Round(s.Distance.Metres, 2)).Distinct().Order().Select(gate => Gate(gate, library)),
            .. Names(trials.OfType<AgilityTrial>(), a => a.Test).Select(test => new InputField($"time of {Words(test)}",
                Known(test) ?? Known($"agility_{test}") ?? Field<AgilityTrial>(test, "s", TrialRule.Best, Direction.Lower, a => a.Test == test ? a.Time.Seconds : null),
                (day, f) => Changed<AgilityTrial>(day, a => a.Test == test ? a with { Time = a.Time * f } : a))),
            .. Names(trials.OfType<ThrowTrial>(), t => t.Throw).Select(kind => new InputField($"distance of {Words(kind)} throw",
                Known($"throw_{kind}") ?? Field<ThrowTrial>(kind, "m", TrialRule.Best, Direction.Higher, t => t.Throw == kind ? t.Distance.Metres : null),
                (day, f) => Changed<ThrowTrial>(day, t => t.Throw == kind ? t with { Distance = t.Distance * f } : t))),
            .. trials.OfType<StairTrial>().Take(1).Select(_ => new InputField("stair time", Field<StairTrial>("stairs", "s", TrialRule.Best, Direction.Lower, t => t.Time.Seconds),
                (day, f) => Changed<StairTrial>(day, t => t with { Time = t.Time * f }))),
        ];
    }

    private static IEnumerable<InputField> Lift(string lift, Func<string, Metric?> known)
    {
        yield return new($"load of {Words(lift)}",
            known($"{lift}_1rm") ?? Measure($"{lift} 1RM", "kg", TrialRule.Best, Direction.Higher, day => DayOneRepMax.From(day.Of<LiftSet>().Where(s => s.Lift == lift)) is { } best ? [best.Value.Kilograms] : []),
            (day, f) => Changed<LiftSet>(day, s => s.Lift == lift ? s with { Load = s.Load * f } : s));
        yield return new($"pull time of {Words(lift)}", Field<LiftSet>($"{lift} pull", "s", TrialRule.Mean, Direction.Lower, s => s.Lift == lift ? s.PullTime?.Seconds : null),
            (day, f) => Changed<LiftSet>(day, s => s.Lift == lift ? s with { PullTime = s.PullTime * f } : s));
    }

    private static IEnumerable<InputField> Jump(JumpKind kind, Func<string, Metric?> known)
    {
        var name = Words(kind.ToString());
        if (kind == JumpKind.StandingLong)
        {
            yield return new("distance of standing long jump", known("standing_long_jump") ?? Field<JumpTrial>("long jump", "cm", TrialRule.Best, Direction.Higher, j => j.Kind == kind ? j.Distance?.Centimetres : null),
                (day, f) => Changed<JumpTrial>(day, j => j.Kind == kind ? j with { Distance = j.Distance * f } : j));
            yield break;
        }

        var height = kind switch { JumpKind.Countermovement => known("cmj_height"), JumpKind.Squat => known("sj_height"), _ => null };
        // Height goes with the square of flight time.
        yield return new($"height of {name} jump", height ?? Field<JumpTrial>($"{name} height", "cm", TrialRule.Mean, Direction.Higher, j => j.Kind == kind ? JumpReading.From(j)?.Height.Centimetres : null),
            (day, f) => Changed<JumpTrial>(day, j => j.Kind == kind ? j with { Height = j.Height * f, FlightTime = j.FlightTime * Math.Sqrt(f) } : j));
        yield return new($"contact time of {name} jump", Field<JumpTrial>($"{name} contact", "s", TrialRule.Mean, Direction.Lower, j => j.Kind == kind ? j.ContactTime?.Seconds : null),
            (day, f) => Changed<JumpTrial>(day, j => j.Kind == kind ? j with { ContactTime = j.ContactTime * f } : j));
    }

    private static InputField Gate(double metres, IReadOnlyList<Metric> library)
    {
        var gate = Length.FromMetres(metres);
        // To 2 cm: a gate at 9.14 m is one at 10 yd.
        var yards = Math.Abs(gate.Yards - Math.Round(gate.Yards)) < 0.02;
        var name = string.Create(CultureInfo.InvariantCulture, $"{(yards ? Math.Round(gate.Yards) : metres):0.##} {(yards ? "yd" : "m")}");
        return new($"time at {name}",
            library.FirstOrDefault(m => m.Id == $"sprint_{name.Replace(" ", "", StringComparison.Ordinal)}")
                ?? Field<SprintTrial>(name, "s", TrialRule.Best, Direction.Lower, s => s.TimeAt(gate)?.Seconds),
            (day, f) => Changed<SprintTrial>(day, s => s.TimeAt(gate) is null ? s : s with { Splits = [.. s.Splits.Select(p => Math.Abs(p.Distance.Metres - metres) < 0.01 ? p with { Time = p.Time * f } : p)] }));
    }

    private static Metric Field<T>(string id, string unit, TrialRule rule, Direction better, Func<T, double?> value) where T : Trial => Bare(id, unit, rule, better,
        day => day.Of<T>().Where(t => value(t) is > 0).Select(t => new TrialValue(value(t)!.Value, Series: TrialScale.Of(t).Name)));

    private static Metric Measure(string id, string unit, TrialRule rule, Direction better, Func<AthleteDay, IEnumerable<double>> values)
        => Bare(id, unit, rule, better, day => values(day).Select(v => new TrialValue(v)));

    private static Metric Bare(string id, string unit, TrialRule rule, Direction better, Func<AthleteDay, IEnumerable<TrialValue>> values) => new()
    {
        Id = $"input {id}", Label = id, Unit = unit, Decimals = 3, Better = better, Quality = Quality.Body, Rule = rule, FromTrials = values,
        // Amounts above 0, so that their error is taken as a share.
        PlausibleLow = double.Epsilon, PlausibleHigh = 1e6, Meaning = id, Formula = id, Sources = [],
    };

    private static AthleteDay Changed<T>(AthleteDay day, Func<T, Trial> change) where T : Trial
    {
        var trials = Change(day, change);
        return trials.Zip(day.Trials).All(p => ReferenceEquals(p.First, p.Second)) ? day : day with { Trials = trials };
    }

    private static IReadOnlyList<Trial> Change<T>(AthleteDay day, Func<T, Trial> change) where T : Trial => [.. day.Trials.Select(t => t is T own ? change(own) : t)];

    private static IEnumerable<string> Names<T>(IEnumerable<T> trials, Func<T, string> name) => trials.Select(name).Distinct().Order(StringComparer.Ordinal);

    private static string Words(string id) => string.Concat(id.Select((c, i) => c == '_' ? " " : char.IsUpper(c) && i > 0 ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}

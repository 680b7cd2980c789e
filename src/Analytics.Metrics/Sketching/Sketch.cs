using System.Runtime.CompilerServices;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>Writes a new metric down as a formula over typed trials.</summary>
/// <example>
/// <code>
/// var idea = Sketch.Each&lt;JumpTrial&gt;("long_jump_for_size", "Long jump for size", unit: "1", Direction.Higher, believe: (0.8, 2.2),
///     (jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null) with { Rule = TrialRule.Best };
/// </code>
/// </example>
public static class Sketch
{
    /// <summary>One value a trial.</summary>
    /// <typeparam name="T">Kind of trial: <see cref="LiftSet"/>, <see cref="JumpTrial"/>, <see cref="SprintTrial"/>, <see cref="AgilityTrial"/>, <see cref="ThrowTrial"/>, <see cref="StairTrial"/>, <see cref="ContactTrial"/>, <see cref="BodyMeasure"/>.</typeparam>
    /// <param name="id">Identifier, lower case with underscores.</param>
    /// <param name="label">Label, without unit.</param>
    /// <param name="unit">Unit of the values, for example <c>kg·m/s</c>, <c>°/(N·s)</c>, <c>%</c> or <c>1</c>; what the formula gives is held against it.</param>
    /// <param name="better">Which direction is better.</param>
    /// <param name="believe">Lowest and highest value to be believed, in the unit.</param>
    /// <param name="value">The value of a trial on its day; null where it gives none.</param>
    /// <param name="written">The formula as written; filled in by the compiler.</param>
    public static MetricSketch Each<T>(
        string id, string label, string unit, Direction better, (double Low, double High) believe,
        Func<T, AthleteDay, AnyQuantity?> value, [CallerArgumentExpression(nameof(value))] string written = "") where T : Trial
    {
        ArgumentNullException.ThrowIfNull(value);
        return Make(id, label, unit, better, believe, typeof(T), u => AttemptFormula.Each(u, value), written);
    }

    /// <summary>One value a day, worked out of any of its trials.</summary>
    /// <param name="id">Identifier, lower case with underscores.</param>
    /// <param name="label">Label, without unit.</param>
    /// <param name="unit">Unit of the values; what the formula gives is held against it.</param>
    /// <param name="better">Which direction is better.</param>
    /// <param name="believe">Lowest and highest value to be believed, in the unit.</param>
    /// <param name="value">The value of a day; null where it gives none. <see cref="DayReadings.Value"/> gives it any library metric of the day.</param>
    /// <param name="written">The formula as written; filled in by the compiler.</param>
    public static MetricSketch Day(
        string id, string label, string unit, Direction better, (double Low, double High) believe,
        Func<AthleteDay, AnyQuantity?> value, [CallerArgumentExpression(nameof(value))] string written = "")
    {
        ArgumentNullException.ThrowIfNull(value);
        return Make(id, label, unit, better, believe, null, u => AttemptFormula.Day(u, value), written);
    }

    private static MetricSketch Make(
        string id, string label, string unit, Direction better, (double Low, double High) believe, Type? kind, Func<string, AttemptFormula> formula, string written)
    {
        ArgumentNullException.ThrowIfNull(id);
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(unit);
        return new() { Id = id, Label = label, Unit = unit, Better = better, Low = believe.Low, High = believe.High, Kind = kind, MakeFormula = formula, Written = written };
    }
}

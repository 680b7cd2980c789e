using System.Runtime.CompilerServices;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Catalogue;

/// <summary>
/// A formula over typed trials with its unit: what an attempt, or a whole day, gives. The dimension of every result is held against the unit, and the scale
/// (timing, device, ball) is found out, so that values of two scales are never compared.
/// </summary>
/// <example>
/// <code>
/// FromTrials = AttemptFormula.Each&lt;ThrowTrial&gt;("m/kg", (t, day) => (AnyQuantity?)t.Distance / day.BodyMass).Of,
/// </code>
/// </example>
public sealed class AttemptFormula
{
    private readonly Func<AthleteDay, IEnumerable<AttemptCall>> _calls;
    private readonly ConditionalWeakTable<AthleteDay, IReadOnlyList<TrialValue>> _made = [];

    private AttemptFormula(string unit, Func<AthleteDay, IEnumerable<AttemptCall>> calls) => (Unit, _calls) = (UnitExpression.Parse(unit), calls);

    /// <summary>The unit the numbers are in.</summary>
    public UnitExpression Unit { get; }

    /// <summary>One value a trial.</summary>
    /// <typeparam name="T">Kind of trial.</typeparam>
    /// <param name="unit">Unit of the values, see <see cref="UnitExpression"/>.</param>
    /// <param name="value">The value of a trial on its day; null where it gives none.</param>
    /// <exception cref="FormatException">The unit cannot be read.</exception>
    public static AttemptFormula Each<T>(string unit, Func<T, AthleteDay, AnyQuantity?> value) where T : Trial
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(unit, day => day.Of<T>().Select(trial => new AttemptCall(trial, day, d => value(trial, d))));
    }

    /// <summary>One value a day.</summary>
    /// <param name="unit">Unit of the values, see <see cref="UnitExpression"/>.</param>
    /// <param name="value">The value of a day; null where it gives none.</param>
    /// <exception cref="FormatException">The unit cannot be read.</exception>
    public static AttemptFormula Day(string unit, Func<AthleteDay, AnyQuantity?> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(unit, day => [new AttemptCall(null, day, value)]);
    }

    /// <summary>The values of a day, worked out once; an attempt without a value, or with 0 over 0, is left out, an infinite one is kept for whoever compares to set aside.</summary>
    /// <param name="day">The athlete's day.</param>
    /// <exception cref="UnitMismatchException">The formula gives another dimension than the unit's.</exception>
    public IEnumerable<TrialValue> Of(AthleteDay day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return _made.GetValue(day, d => [.. Calls(d).Select(c => c.Evaluate(Unit)).OfType<TrialValue>().Where(v => !double.IsNaN(v.Value))]);
    }

    /// <summary>The evaluations of a day, not yet made.</summary>
    internal IEnumerable<AttemptCall> Calls(AthleteDay day) => _calls(day);
}

using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Catalogue;

/// <summary>One evaluation of a formula, not yet made.</summary>
/// <param name="Trial">The trial it is of; null when it is of the whole day.</param>
/// <param name="Day">The day.</param>
/// <param name="Value">The formula on a day with this trial.</param>
internal sealed record AttemptCall(Trial? Trial, AthleteDay Day, Func<AthleteDay, AnyQuantity?> Value)
{
    /// <summary>The value with its scale; null when there is none.</summary>
    public TrialValue? Evaluate(UnitExpression unit)
        => Value(Day) is { } value
            ? new TrialValue(value.In(unit), Series: ScalesUsed.Of(this, value), Doubt: UsesBodyMass(value) ? BodyMassAge.Remark(Day) : null)
            : null;

    /// <summary>The bare number, without its scale; null when there is none.</summary>
    public double? Number(UnitExpression unit) => Value(Day)?.In(unit);

    // Only asked where the mass is old: a formula that does not change with it does not use it.
    private bool UsesBodyMass(AnyQuantity value)
    {
        if (Day.BodyMass is not { } mass || BodyMassAge.Remark(Day) is null) return false;
        return ScalesUsed.Differs(value, Value, Day with { BodyMass = mass * 1.1 });
    }
}

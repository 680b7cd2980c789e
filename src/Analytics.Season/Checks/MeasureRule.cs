using Analytics.Metrics.Trials;
using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>How far a value may lie from what is known before another unit explains it better. Compared by identity.</summary>
/// <param name="column">Column the value was typed in.</param>
/// <param name="bestOfDay">Whether the best value stands for the day (sets may build up); else the middle one.</param>
/// <param name="own">Ratios for comparing with the athlete's own values.</param>
/// <param name="squad">Ratios for comparing with the squad, where the athlete has no other day.</param>
internal sealed class MeasureRule(QuantityColumn column, bool bestOfDay, Ratios own, Ratios squad)
{
    public QuantityColumn Column { get; } = column;

    public bool BestOfDay { get; } = bestOfDay;

    public Ratios Own { get; } = own;

    public Ratios Squad { get; } = squad;
}

/// <summary>Two ratios, from 1.</summary>
/// <param name="Far">From here on a value is suspect.</param>
/// <param name="Near">Within this the other unit must bring it.</param>
internal readonly record struct Ratios(double Far, double Near);

/// <summary>What is compared with what: values of one measure only.</summary>
/// <param name="Rule">How it is judged.</param>
/// <param name="Test">What was done.</param>
/// <param name="Variant">What else tells scales apart.</param>
internal readonly record struct MeasureKey(MeasureRule Rule, string Test, int Variant);

/// <summary>One value of a measure.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Table">Where it was read.</param>
/// <param name="Value">Value compared, SI.</param>
/// <param name="Typed">Value as it stands in the column, SI; NaN when it comes from elsewhere or has been checked, and so cannot be in a wrong unit.</param>
internal readonly record struct Reading(Trial Trial, ReadTable Table, double Value, double Typed)
{
    /// <summary>Whether the value can stand in a wrong unit.</summary>
    public bool CanBeMistyped => !double.IsNaN(Typed);
}

using Analytics.Season.Columns;
using Analytics.Season.Intake;

namespace Analytics.Season.Checks;

/// <summary>How far a value may lie from what is known before another unit explains it better. Ratios, from 1.</summary>
/// <param name="Column">Column the value was typed in.</param>
/// <param name="BestOfDay">Whether the best value stands for the day (sets may build up); else the middle one.</param>
/// <param name="OwnFar">Ratio to the athlete's other days from which a value is suspect.</param>
/// <param name="OwnNear">Ratio within which the other unit must bring it to them.</param>
/// <param name="SquadFar">The same towards the squad, where the athlete has no other day.</param>
/// <param name="SquadNear">The same towards the squad.</param>
internal sealed record MeasureRule(QuantityColumn Column, bool BestOfDay, double OwnFar, double OwnNear, double SquadFar, double SquadNear);

/// <summary>What is compared with what: values of one measure only.</summary>
/// <param name="Rule">How it is judged.</param>
/// <param name="Test">What was done.</param>
/// <param name="Variant">What else tells scales apart.</param>
internal readonly record struct MeasureKey(MeasureRule Rule, string Test, int Variant);

/// <summary>One value of a measure.</summary>
/// <param name="Source">The row.</param>
/// <param name="Day">Number of the day.</param>
/// <param name="Value">Value compared, SI.</param>
/// <param name="Typed">Value as it stands in the column, SI; NaN when it comes from elsewhere and cannot be in a wrong unit.</param>
internal readonly record struct Reading(Candidate Source, int Day, double Value, double Typed)
{
    /// <summary>Whether the value can stand in a wrong unit.</summary>
    public bool CanBeMistyped => !double.IsNaN(Typed);
}

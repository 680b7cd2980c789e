using Analytics.Metrics.Trials;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Checks;

/// <summary>Looks for single values in another unit, athlete by athlete.</summary>
internal sealed class RowMixUps(MeasureHistory history)
{
    private readonly Dictionary<Trial, CellFault> faults = new(ReferenceEqualityComparer.Instance);
    private readonly MeasureRule rule = history.Key.Rule;

    /// <summary>What was found.</summary>
    public IReadOnlyDictionary<Trial, CellFault> Faults => faults;

    /// <summary>Checks all days of an athlete.</summary>
    public void Check(AthleteHistory athlete)
    {
        var usual = history.Usual(athlete.AthleteId);
        foreach (var day in athlete.Days)
        {
            var others = athlete.OtherDays(day.Day);
            var readings = athlete.Of(day);
            for (var i = 0; i < readings.Length; i++)
                if (readings[i].CanBeMistyped && Fault(readings, i, day, others, usual) is { } fault) faults[readings[i].Trial] = fault;
        }
    }

    /// <summary>Compares with the athlete's other days; without any, with his other rows of the day, then with the squad.</summary>
    private CellFault? Fault(ReadOnlySpan<Reading> readings, int index, AthleteDayLevel day, (int Count, double Level) others, double? usual)
    {
        var reading = readings[index];
        if (others.Count > 0) return ByOwn(reading, day, others.Level, usual, others.Count >= 3 || (usual is null && others.Count is 2));
        if (SameDay(readings, index, day) is { } level && ByOwn(reading, day, level, usual, usual is null && readings.Length >= 3) is { } fault) return fault;
        return usual is { } squad ? Compare(reading, day, squad, rule.Squad, "the usual value of the squad", null) : null;
    }

    /// <summary>With few values it may be the others that are wrong; then the squad decides.</summary>
    private CellFault? ByOwn(Reading reading, AthleteDayLevel day, double level, double? usual, bool isSure)
        => isSure || usual is not null ? Compare(reading, day, level, rule.Own, "what this athlete does otherwise", isSure ? null : usual) : null;

    private CellFault? Compare(Reading reading, AthleteDayLevel day, double level, Ratios ratios, string what, double? judge)
    {
        if (Judged(reading.Value, day.Level, level) is not { } value) return null;
        if (UnitGuess.Of(rule.Column, reading.Table, value, level, ratios) is not { } meant) return null;
        var converted = value * UnitGuess.Factor(rule.Column, reading.Table, meant);
        if (judge is { } usual && UnitGuess.Distance(converted, usual) >= UnitGuess.Distance(value, usual)) return null;
        return UnitGuess.Fault(rule.Column, reading.Table, reading.Typed, $"{CellText.Number(Math.Round(value / level, 2))} times {what}", meant);
    }

    /// <summary>Light sets before a heavy one are no slip: only a day whose best is light can be one, and then its best is judged.</summary>
    private double? Judged(double value, double ofDay, double level) => !rule.BestOfDay || value >= level ? value : ofDay < level ? ofDay : null;

    private double? SameDay(ReadOnlySpan<Reading> readings, int index, AthleteDayLevel day)
    {
        if (!rule.BestOfDay) return readings.Length > 2 ? day.Level : null;
        var best = double.NegativeInfinity;
        for (var i = 0; i < readings.Length; i++)
            if (i != index) best = Math.Max(best, readings[i].Value);
        return readings.Length > 1 ? best : null;
    }
}

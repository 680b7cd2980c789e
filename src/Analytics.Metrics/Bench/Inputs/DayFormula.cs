using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>A sketch's value of one athlete's day, asked again with other inputs: by the same attempts, on the same scale, under the same rule.</summary>
internal sealed class DayFormula
{
    private readonly MetricSketch _sketch;
    private readonly bool[] _counted;

    private DayFormula(MetricSketch sketch, AthleteDay day, bool[] counted, double value) => (_sketch, Day, _counted, Value) = (sketch, day, counted, value);

    public AthleteDay Day { get; }

    public double Value { get; }

    /// <summary>The formula on this day; null when no attempt gives a value on the scale.</summary>
    public static DayFormula? Of(MetricSketch sketch, AthleteDay day, string? series)
    {
        var attempts = sketch.Attempts(day);
        bool[] counted = [.. attempts.Select(a => a is { } v && v.Series == series && double.IsFinite(v.Value))];
        return counted.Any(c => c) ? new(sketch, day, counted, Rule(sketch, [.. attempts.Where((_, i) => counted[i]).Select(a => a!.Value)])) : null;
    }

    /// <summary>The value with other inputs; null when the formula gives none.</summary>
    public double? With(AthleteDay day)
    {
        var numbers = _sketch.Numbers(day);
        List<double> own = [.. numbers.Where((n, i) => i < _counted.Length && _counted[i] && n is { } v && double.IsFinite(v)).Select(n => n!.Value)];
        return own.Count > 0 ? Rule(_sketch, own) : null;
    }

    private static double Rule(MetricSketch sketch, IReadOnlyList<double> values)
        => sketch.Rule == TrialRule.Mean ? values.Average() : sketch.Better == Direction.Lower ? values.Min() : values.Max();
}

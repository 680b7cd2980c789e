using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>Evaluates a sketch's formula, each athlete's day once, and keeps what went wrong.</summary>
internal sealed class SketchRun(MetricSketch sketch)
{
    private readonly AttemptFormula _formula = sketch.MakeFormula(sketch.Unit);
    private readonly ConditionalWeakTable<AthleteDay, IReadOnlyList<TrialValue>> _made = [];
    private readonly ConcurrentDictionary<(string Athlete, DateOnly Date, string Message), SketchTrouble> _troubles = [];
    private int _slow;

    public bool IsGivenUp => _slow >= sketch.Limits.SlowDays;

    public IReadOnlyList<SketchTrouble> Troubles
        => [.. _troubles.Values.OrderBy(t => t.Date).ThenBy(t => t.AthleteId, StringComparer.Ordinal).ThenBy(t => t.Message, StringComparer.Ordinal)];

    public IReadOnlyList<TrialValue> Of(AthleteDay day) => _made.GetValue(day, Evaluate);

    /// <summary>The values of a day's attempts in order, null where one gives none; troubles are not kept.</summary>
    public IReadOnlyList<TrialValue?> Attempts(AthleteDay day) => IsGivenUp ? [] : Each(day, c => Value(c, out _));

    /// <summary>The same as bare numbers, without asking for their scales: for days that were made up.</summary>
    public IReadOnlyList<double?> Numbers(AthleteDay day) => IsGivenUp ? [] : Each(day, c => c.Number(_formula.Unit));

    private List<T?> Each<T>(AthleteDay day, Func<AttemptCall, T?> value)
    {
        try
        {
            return [.. _formula.Calls(day).Select(c => Quietly(() => value(c)))];
        }
#pragma warning disable CA1031 // What went wrong on a real day is told elsewhere.
        catch (Exception)
#pragma warning restore CA1031
        {
            return [];
        }
    }

    private static T? Quietly<T>(Func<T?> value)
    {
        try
        {
            return value();
        }
#pragma warning disable CA1031 // As above.
        catch (Exception)
#pragma warning restore CA1031
        {
            return default;
        }
    }

    private IReadOnlyList<TrialValue> Evaluate(AthleteDay day)
    {
        if (IsGivenUp)
        {
            Tell(day, TroubleKind.Slow, $"not worked out: the formula was given up after {sketch.Limits.SlowDays} days that took too long.");
            return [];
        }

        var found = new List<(TroubleKind Kind, string Message)>();
        var values = new List<TrialValue>();
        if (!TimeLimit.Kept(() => Fill(day, values, found), sketch.Limits.OneDay))
        {
            Interlocked.Increment(ref _slow);
            Tell(day, TroubleKind.Slow, FormattableString.Invariant($"the formula took longer than the {sketch.Limits.OneDay.TotalSeconds:0.###} s allowed for one player's day."));
            return [];
        }

        foreach (var (kind, message) in found) Tell(day, kind, message);
        return values;
    }

    private void Fill(AthleteDay day, List<TrialValue> values, List<(TroubleKind Kind, string Message)> found)
    {
        try
        {
            foreach (var call in _formula.Calls(day))
            {
                if (Value(call, out var trouble) is { } value) values.Add(value);
                if (trouble is { } t) found.Add(t);
            }
        }
#pragma warning disable CA1031 // The formula is anybody's code: whatever it throws must not stop the others.
        catch (Exception e)
#pragma warning restore CA1031
        {
            found.Add(TroubleText.Of(e, sketch.Unit));
        }
    }

    private TrialValue? Value(AttemptCall call, out (TroubleKind Kind, string Message)? trouble)
    {
        trouble = null;
        try
        {
            var value = call.Evaluate(_formula.Unit);
            if (value is null || double.IsFinite(value.Value)) return value;
            trouble = (TroubleKind.NotFinite, TroubleText.NotFinite);
        }
#pragma warning disable CA1031 // As above.
        catch (Exception e)
#pragma warning restore CA1031
        {
            trouble = TroubleText.Of(e, sketch.Unit);
        }

        return null;
    }

    private void Tell(AthleteDay day, TroubleKind kind, string message)
        => _troubles[(day.AthleteId, day.Date, message)] = new(kind, day.AthleteId, day.Date, message);
}

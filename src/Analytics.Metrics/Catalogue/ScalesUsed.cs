using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Catalogue;

/// <summary>
/// The scales a value was made on. What a formula looks at cannot be read off it, so it is tried: trials of a scale are used when the value changes, or is lost,
/// without them. Where two scales of a test give the very same value, either can be missed but not both: then both are named.
/// </summary>
internal static class ScalesUsed
{
    public static string Of(AttemptCall call, AnyQuantity value)
    {
        var own = call.Trial is null ? null : TrialScale.Of(call.Trial);
        var used = own is null ? [] : new HashSet<string>(StringComparer.Ordinal) { own.Name };
        var tests = call.Day.Trials.Select(TrialScale.Of).Where(s => s.Name.Length > 0).Distinct().GroupBy(s => s.Test, StringComparer.Ordinal);
        foreach (var scales in tests.Select(g => g.ToList()))
        {
            // Most tests of a day have no part in a formula: asked first, that saves asking by scale.
            if (scales.TrueForAll(s => used.Contains(s.Name)) || !Needs(call, value, scales.Contains)) continue;
            var needed = scales.Count == 1 ? scales : scales.FindAll(scale => Needs(call, value, s => s == scale));
            used.UnionWith((needed.Count > 0 ? needed : scales).Select(s => s.Name));
        }

        return string.Join("; ", used.Where(n => n.Length > 0).Order(StringComparer.Ordinal));
    }

    private static bool Needs(AttemptCall call, AnyQuantity value, Predicate<TrialScale> scale)
        => Differs(value, call.Value, call.Day with { Trials = [.. call.Day.Trials.Where(t => !scale(TrialScale.Of(t)))] });

    /// <summary>Whether a formula gives another value, none, or fails on another day.</summary>
    public static bool Differs(AnyQuantity value, Func<AthleteDay, AnyQuantity?> formula, AthleteDay day)
    {
        try
        {
            return formula(day) is not { } other || !other.Si.Equals(value.Si);
        }
#pragma warning disable CA1031 // Any failure says that what was taken away is needed.
        catch (Exception)
#pragma warning restore CA1031
        {
            return true;
        }
    }
}

using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Catalogue;

/// <summary>
/// The scales a value was made on. What a formula looks at cannot be read off it, so it is tried: trials of a scale are used when the value changes, or is lost,
/// without them.
/// </summary>
internal static class ScalesUsed
{
    public static string Of(AttemptCall call, AnyQuantity value)
    {
        var own = call.Trial is null ? null : TrialScale.Of(call.Trial);
        var used = own is null ? [] : new HashSet<string>(StringComparer.Ordinal) { own.Name };
        foreach (var scale in call.Day.Trials.GroupBy(TrialScale.Of))
        {
            if (scale.Key.Name.Length == 0 || used.Contains(scale.Key.Name)) continue;
            var without = call.Day with { Trials = [.. call.Day.Trials.Where(t => TrialScale.Of(t) != scale.Key)] };
            if (Differs(value, call.Value, without)) used.Add(scale.Key.Name);
        }

        return string.Join("; ", used.Where(n => n.Length > 0).Order(StringComparer.Ordinal));
    }

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

using Analytics.Metrics.Catalogue;
using Analytics.Quantities;

namespace Analytics.Metrics.Sketching;

/// <summary>What is wrong with a sketch before its formula is asked.</summary>
internal static class SketchFault
{
    /// <summary>Most decimals of a value: small amounts such as errors are shown with one or two more, and nine is all a report can show.</summary>
    public const int MostDecimals = 6;

    public static string? Of(MetricSketch sketch)
    {
        if (!MetricSketch.IdForm().IsMatch(sketch.Id))
            return $"The identifier '{sketch.Id}' must be lower case letters, digits and single underscores, beginning with a letter, for example first_step_push.";
        if (MetricCatalogue.All.FirstOrDefault(m => m.Id == sketch.Id) is { } known)
            return $"The identifier '{sketch.Id}' is that of a library metric ({known.Label}). Give the sketch another one.";
        if (string.IsNullOrWhiteSpace(sketch.Label)) return $"The sketch '{sketch.Id}' needs a label to be read by.";
        if (!(sketch.Low < sketch.High) || !double.IsFinite(sketch.Low) || !double.IsFinite(sketch.High))
            return FormattableString.Invariant($"The values to be believed go from {sketch.Low} to {sketch.High} {sketch.Unit}; two finite numbers are needed, the lower one first.");
        if (sketch.Minutes is < 0 or > 120 || sketch.Minutes is { } m2 && double.IsNaN(m2)) return FormattableString.Invariant($"The minutes per player must be 0 to 120; got {sketch.Minutes}.");
        if (sketch.Decimals is < 0 or > MostDecimals) return FormattableString.Invariant($"The decimals shown must be 0 to {MostDecimals}; got {sketch.Decimals}.");
        try
        {
            UnitExpression.Parse(sketch.Unit);
            return null;
        }
        catch (FormatException e)
        {
            return e.Message;
        }
    }
}

using Analytics.Statistics;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.Contact;

/// <summary>One figure read off a repetition, or why there is none.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="Unit">Unit symbol.</param>
/// <param name="Estimate">The figure with its error; null when there is none.</param>
/// <param name="WhyNot">Why there is none; empty when there is one.</param>
public sealed record ContactMeasure(string Name, string Unit, Estimate? Estimate, string WhyNot)
{
    internal static ContactMeasure None(string name, string unit, string whyNot) => new(name, unit, null, whyNot);

    internal ResultLine Line() => Estimate is { } e
        ? new(Name, e.Value, Unit) { Interval = e.Interval, StandardError = e.StandardError, Note = e.StandardError is null ? "no error known" : string.Empty }
        : new(Name, null, Unit) { Note = WhyNot };
}

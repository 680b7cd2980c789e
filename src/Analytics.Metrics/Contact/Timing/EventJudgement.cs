using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>How well one kind of event is judged by eye.</summary>
/// <param name="Sd">SD of one reading.</param>
/// <param name="DegreesOfFreedom">Repeat readings less clips behind it; null for an assumed value, taken as known.</param>
/// <param name="Source">Where it comes from, in words.</param>
public sealed record EventJudgement(Duration Sd, int? DegreesOfFreedom, string Source)
{
    /// <summary>The judgement in words.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"SD {Sd.Milliseconds:0.#} ms ({Source})");
}

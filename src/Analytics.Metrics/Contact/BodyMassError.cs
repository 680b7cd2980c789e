using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>Error of a body mass from the scales.</summary>
public static class BodyMassError
{
    /// <summary>0.5 kg: scales, clothing and drink between weighing and running; common practice, no source. Equipment (several kg) is not in it: add it to the mass when it is worn.</summary>
    public static Mass Usual { get; } = Mass.FromKilograms(0.5);
}

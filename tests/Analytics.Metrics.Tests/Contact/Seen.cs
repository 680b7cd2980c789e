using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>Contact trials for tests, filmed at 240 Hz unless said otherwise.</summary>
internal static class Seen
{
    public static FrameClock Rate(double hertz) => FrameClock.FromRate(Frequency.FromHertz(hertz));

    public static Duration Ms(double milliseconds) => Duration.FromMilliseconds(milliseconds);

    public static Duration S(double seconds) => Duration.FromSeconds(seconds);

    /// <summary>Readings as pairs of frames: first movement, contact.</summary>
    public static ContactTrial Trial(FrameClock clock, params (int First, int Contact)[] readings) => new()
    {
        AthleteId = "a1",
        Date = new(2026, 3, 2),
        Clip = "a1-1",
        Clock = clock,
        Readings = [.. readings.Select((r, i) => new ContactReading(i + 1, new(r.First), new(r.Contact)))],
    };

    public static ContactTrial Trial(params (int First, int Contact)[] readings) => Trial(Rate(240), readings);
}

using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Contact;

/// <summary>
/// A repetition with motion given by polynomials, filmed at a rate: first movement near 0.1 s, contact near 0.525 s, both half way between two frames, where an event is taken to be. The hips gain 3 m/s² from the first
/// movement on; the trunk leans 45° and is turned back by 60°/s from contact on; the shins lean 30° at contact and turn by 100°/s. So every figure is known exactly.
/// </summary>
internal static class LinearRunner
{
    public const double ContactSpeed = 3 * 0.425;

    public static ContactTrial Trial(double rate = 240, double noise = 0, int seed = 1, Func<int, bool>? missing = null, bool legs = true, double farUp = 0)
    {
        var clock = FrameClock.FromRate(Frequency.FromHertz(rate));
        var count = (int)Math.Round(0.8 * rate);
        var (first, contact) = ((int)Math.Round(0.1 * rate) + 1, (int)Math.Round((0.525 * rate) - 0.25) + 1);
        var random = new Random(seed);
        var places = new Dictionary<MarkerRole, List<(double X, double Y)>>();
        for (var i = 0; i < count; i++)
            foreach (var (role, x, y) in At(i / rate, (first - 0.5) / rate, (contact - 0.5) / rate, legs, farUp)) (places.TryGetValue(role, out var list) ? list : places[role] = []).Add((x, y));
        return new()
        {
            AthleteId = "a1",
            Date = new(2026, 3, 2),
            Clip = "run",
            Clock = clock,
            Readings = [new(1, new(first), new(contact))],
            Gap = Length.FromMetres(0.5),
            Digitised = new(clock, places.Select(p => new MarkerTrack(p.Key.InWords(), p.Key, Blank(p.Value, v => v.X), Blank(p.Value, v => v.Y))), 0, noise > 0 ? Length.FromMetres(noise) : Length.FromMetres(1e-9), 0),
        };

        double[] Blank(List<(double X, double Y)> at, Func<(double X, double Y), double> axis)
            => [.. at.Select((p, i) => missing?.Invoke(i) == true ? double.NaN : axis(p) + (noise * Normal()))];

        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
    }

    private static IEnumerable<(MarkerRole Role, double X, double Y)> At(double t, double first, double contact, bool legs, double farUp)
    {
        double run = Math.Max(0, t - first), x = 1.5 * run * run;
        double trunk = 45 - (60 * Math.Max(0, t - contact)), shin = 30 + (100 * (t - contact));
        yield return (MarkerRole.Hip, x, 0.9);
        yield return (MarkerRole.Shoulder, x + (0.5 * Sin(trunk)), 0.9 + (0.5 * Cos(trunk)));
        yield return (MarkerRole.FarHip, x, 0.9);
        yield return (MarkerRole.FarShoulder, x + (0.5 * Sin(trunk)), 0.9 + (0.5 * Cos(trunk)));
        if (!legs) yield break;
        foreach (var (knee, ankle, up) in new[] { (MarkerRole.Knee, MarkerRole.Ankle, 0), (MarkerRole.FarKnee, MarkerRole.FarAnkle, farUp) })
        {
            yield return (knee, x + 0.1, 0.5 + up);
            yield return (ankle, x + 0.1 - (0.42 * Sin(shin)), 0.5 + up - (0.42 * Cos(shin)));
        }
    }

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);
}

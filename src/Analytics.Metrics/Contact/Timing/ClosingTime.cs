using Analytics.Metrics.Sprinting.Curve;
using Analytics.Quantities;

namespace Analytics.Metrics.Contact;

/// <summary>When two players who close a gap meet, or words why they do not. Constant acceleration: kinematics of any textbook; two standing starts: the sprint of [keller1973].</summary>
public sealed record ClosingTime
{
    private ClosingTime(Duration? time, Speed? closing, string? whyNot) => (Time, ClosingSpeed, WhyNot) = (time, closing, whyNot);

    /// <summary>Time until the gap is closed; null when it never is.</summary>
    public Duration? Time { get; }

    /// <summary>Closing speed at that time.</summary>
    public Speed? ClosingSpeed { get; }

    /// <summary>Why they do not meet; null when they do.</summary>
    public string? WhyNot { get; }

    /// <summary>Constant closing acceleration A: [−c + √(c² + 2·A·gap)]/A; gap/c when A is 0.</summary>
    /// <param name="gap">Gap, 0 or more.</param>
    /// <param name="closing">c, closing speed now; negative when they part.</param>
    /// <param name="acceleration">A; 0 when left out.</param>
    /// <exception cref="ArgumentOutOfRangeException">A gap below 0.</exception>
    public static ClosingTime At(Length gap, Speed closing, Acceleration acceleration = default)
    {
        double s = Require.NotNegative(gap, "gap").Metres, c = closing.MetresPerSecond, a = acceleration.MetresPerSecondSquared;
        if (s == 0) return new(Duration.Zero, closing, null);
        if (a <= 0 && c <= 0) return new(null, null, $"the gap of {gap} does not close: closing speed {closing}, closing acceleration {acceleration}");
        var root = (c * c) + (2 * a * s);
        if (root < 0) return new(null, null, $"they stop closing before the gap of {gap} is gone: closing speed {closing}, closing acceleration {acceleration}");
        // 2·gap/(c + √…) is the same root and keeps its digits for small A; c ≤ 0 needs the other form.
        var end = Math.Sqrt(root);
        var t = c > 0 ? 2 * s / (c + end) : (end - c) / a;
        return new(Duration.FromSeconds(t), Speed.FromMetresPerSecond(end), null);
    }

    /// <summary>Two standing starts towards each other, the second one later: the root of x₁(t) + x₂(t − delay) = gap.</summary>
    /// <param name="gap">Gap, 0 or more.</param>
    /// <param name="first">The player who starts first.</param>
    /// <param name="second">The other one.</param>
    /// <param name="delay">How much later he starts, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A gap or delay below 0.</exception>
    public static ClosingTime Facing(Length gap, MonoExponential first, MonoExponential second, Duration delay = default)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        Require.NotNegative(delay, "delay");
        // The first alone covers the gap by then, so the root is bracketed; both distances rise, so bisection cannot fail.
        double low = 0, high = first.TimeTo(gap).Seconds, d = delay.Seconds;
        for (var i = 0; i < 200 && high > low; i++)
        {
            var middle = (low + high) / 2;
            if (middle == low || middle == high) break;
            var covered = first.DistanceAt(Duration.FromSeconds(middle)).Metres + (middle > d ? second.DistanceAt(Duration.FromSeconds(middle - d)).Metres : 0);
            if (covered < gap.Metres) low = middle;
            else high = middle;
        }
        var time = Duration.FromSeconds(high);
        var speed = first.SpeedAt(time) + (high > d ? second.SpeedAt(Duration.FromSeconds(high - d)) : Speed.Zero);
        return new(time, speed, null);
    }
}

namespace Analytics.Simulation.Clips.Motion;

/// <summary>The few functions of time the motion is made of, each with its integral or derivative in closed form.</summary>
public static class Curves
{
    /// <summary>0 before time 0, then 1 − (1 + t/τ)·e^(−t/τ): leaves 0 without a jolt and approaches 1.</summary>
    public static double Rise(double t, double tau) => t <= 0 ? 0 : 1 - ((1 + (t / tau)) * Math.Exp(-t / tau));

    /// <summary>Derivative of <see cref="Rise"/>.</summary>
    public static double RiseRate(double t, double tau) => t <= 0 ? 0 : t / (tau * tau) * Math.Exp(-t / tau);

    /// <summary>Time that starts to run at 0: t − τ(1 − e^(−t/τ)). Times a top speed it is the distance of a mono-exponential sprint.</summary>
    public static double Onset(double t, double tau) => t <= 0 ? 0 : t + (tau * (Math.Exp(-t / tau) - 1));

    /// <summary>Derivative of <see cref="Onset"/>: 1 − e^(−t/τ).</summary>
    public static double OnsetRate(double t, double tau) => t <= 0 ? 0 : 1 - Math.Exp(-t / tau);

    /// <summary>Share of a push given by the time t of its length: the integral of a raised cosine, 0 before it, 1 after it, smooth to the second derivative.</summary>
    public static double Push(double t, double length)
    {
        var u = Math.Clamp(t / length, 0, 1);
        return u - (Math.Sin(2 * Math.PI * u) / (2 * Math.PI));
    }

    /// <summary>Integral of <see cref="Push"/> over time from 0.</summary>
    public static double PushIntegral(double t, double length)
    {
        var u = Math.Clamp(t / length, 0, 1);
        var within = (u * u / 2) - ((1 - Math.Cos(2 * Math.PI * u)) / (4 * Math.PI * Math.PI));
        return length * (within + Math.Max(0, (t / length) - 1));
    }
}

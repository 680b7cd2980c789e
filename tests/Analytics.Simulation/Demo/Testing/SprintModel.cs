namespace Analytics.Simulation.Demo.Testing;

/// <summary>
/// Mono-exponential approach to top speed, x = V (t - T (1 - exp(-t/T))), solved by Newton's method: a route of
/// its own, apart from the one the library takes.
/// </summary>
public static class SprintModel
{
    /// <summary>Seconds from the first movement to a distance.</summary>
    public static double TimeTo(double metres, double speed, double timeConstant)
    {
        if (metres <= 0) return 0;
        var d = metres / (speed * timeConstant);
        var u = d + 1 - Math.Exp(-Math.Sqrt(2 * d));
        for (var step = 0; step < 60; step++)
        {
            var change = (u - 1 + Math.Exp(-u) - d) / (1 - Math.Exp(-u));
            u -= change;
            if (Math.Abs(change) <= 1e-14 * u) break;
        }

        return timeConstant * u;
    }

    /// <summary>Speed at a distance from the first movement.</summary>
    public static double SpeedAt(double metres, double speed, double timeConstant)
        => speed * (1 - Math.Exp(-TimeTo(metres, speed, timeConstant) / timeConstant));

    /// <summary>Clock time to a gate when the body had moved by the lead at the moment the clock started.</summary>
    public static double ClockTime(double metres, double speed, double timeConstant, double leadMetres)
        => TimeTo(metres + leadMetres, speed, timeConstant) - TimeTo(leadMetres, speed, timeConstant);
}

namespace Analytics.Notebooks.Charts;

/// <summary>Tick values in steps of 1, 2 or 5 times a power of ten.</summary>
internal static class RoundTicks
{
    /// <summary>The ticks inside the limits, with the smallest step that needs no more than so many ticks.</summary>
    /// <param name="low">Lower limit; finite.</param>
    /// <param name="high">Upper limit; finite and above <paramref name="low"/>.</param>
    /// <param name="most">Most ticks wanted; at least 2.</param>
    public static (double Step, IReadOnlyList<double> Values) Between(double low, double high, int most)
    {
        var power = Math.Floor(Math.Log10((high - low) / most)) - 1;
        for (; ; power++)
        {
            foreach (var digit in (ReadOnlySpan<int>)[1, 2, 5])
            {
                var step = digit * Math.Pow(10, power);
                // The slack keeps a tick that rounding error pushed just outside.
                var first = Math.Ceiling((low / step) - 1e-9);
                var last = Math.Floor((high / step) + 1e-9);
                if (last - first + 1 > most) continue;
                return (step, [.. Enumerable.Range(0, (int)(last - first) + 1).Select(i => (first + i) * step)]);
            }
        }
    }

    /// <summary>Decimals that show a step exactly.</summary>
    /// <param name="step">A step of 1, 2 or 5 times a power of ten.</param>
    public static int Decimals(double step) => Math.Clamp((int)-Math.Floor(Math.Log10(step) + 1e-9), 0, 9);
}

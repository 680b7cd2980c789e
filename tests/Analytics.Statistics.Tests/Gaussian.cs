namespace Analytics.Statistics.Tests;

/// <summary>Seeded standard normal numbers (polar method), the same on every machine.</summary>
internal sealed class Gaussian(int seed)
{
    private readonly Random _random = new(seed);
    private double? _spare;

    public double Next()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        double x, y, s;
        do
        {
            x = 2 * _random.NextDouble() - 1;
            y = 2 * _random.NextDouble() - 1;
            s = x * x + y * y;
        }
        while (s is >= 1 or 0);

        var factor = Math.Sqrt(-2 * Math.Log(s) / s);
        _spare = y * factor;
        return x * factor;
    }
}

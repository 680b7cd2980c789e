namespace Analytics.Simulation.Randomness;

/// <summary>
/// xoshiro256** (Blackman and Vigna 2018) seeded through SplitMix64: written out here so that a seed
/// gives the same season on every version of the runtime.
/// </summary>
public sealed class RandomNumbers
{
    private ulong _s0, _s1, _s2, _s3;
    private double? _spare;

    public RandomNumbers(ulong s0, ulong s1, ulong s2, ulong s3) => (_s0, _s1, _s2, _s3) = (s0, s1, s2, s3);

    /// <summary>
    /// A stream of its own for one purpose and one subject: leaving out one part of a season never
    /// shifts the numbers of another.
    /// </summary>
    public static RandomNumbers For(ulong seed, string purpose, int subject = 0, int occasion = 0)
    {
        var state = Mix(seed);
        foreach (var letter in purpose) state = Mix(state ^ letter);
        state = Mix(state ^ (uint)subject);
        state = Mix(state ^ (uint)occasion);
        return new RandomNumbers(Split(ref state), Split(ref state), Split(ref state), Split(ref state));
    }

    public ulong Next()
    {
        var result = ulong.RotateLeft(_s1 * 5, 7) * 9;
        var shifted = _s1 << 17;
        _s2 ^= _s0;
        _s3 ^= _s1;
        _s1 ^= _s2;
        _s0 ^= _s3;
        _s2 ^= shifted;
        _s3 = ulong.RotateLeft(_s3, 45);
        return result;
    }

    /// <summary>Uniform on [0, 1).</summary>
    public double Uniform() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Uniform on 0 .. count - 1.</summary>
    public int Below(int count) => (int)(Uniform() * count);

    public bool Chance(double probability) => Uniform() < probability;

    /// <summary>Standard normal by the polar method (Marsaglia and Bray 1964).</summary>
    public double Normal()
    {
        if (_spare is { } kept)
        {
            _spare = null;
            return kept;
        }

        double x, y, square;
        do
        {
            x = 2 * Uniform() - 1;
            y = 2 * Uniform() - 1;
            square = x * x + y * y;
        }
        while (square is >= 1 or 0);

        var factor = Math.Sqrt(-2 * Math.Log(square) / square);
        _spare = y * factor;
        return x * factor;
    }

    public double Normal(double mean, double deviation) => mean + deviation * Normal();

    /// <summary>SplitMix64 (Steele, Lea and Flood 2014).</summary>
    public static ulong Split(ref ulong state) => Finish(state += 0x9E3779B97F4A7C15);

    private static ulong Mix(ulong value) => Finish(value + 0x9E3779B97F4A7C15);

    private static ulong Finish(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}

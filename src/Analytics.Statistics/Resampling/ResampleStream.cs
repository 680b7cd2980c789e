using System.Runtime.Intrinsics;

namespace Analytics.Statistics.Resampling;

/// <summary>
/// Unit numbers of a resample as a function of seed and resample number alone, so that no number of threads and no order of work
/// changes a result. Word k of the stream is the finishing function of SplitMix64 at k steps from the key [steele2014].
/// </summary>
/// <remarks>
/// A fraction in base n has unit numbers as its leading digits. Up to <see cref="MostForPairs"/> units each half of a word gives two digits; the chance
/// of a pair differs from 1/n² by less than n²/2³² of itself, 4·10⁻⁶ at most. Beyond, the whole word gives as many digits as leave 28 bits over.
/// </remarks>
internal readonly struct ResampleStream
{
    public const int MostForPairs = 128;
    private const ulong Step = 0x9E3779B97F4A7C15;
    private const double MostStates = 1L << 36;

    private readonly ulong _key;
    private readonly int _words;

    public ResampleStream(ulong seed, int units, int draws)
    {
        Units = units;
        Draws = draws;
        _key = Finish(seed + Step);
        DigitsPerWord = units <= MostForPairs ? 4 : Math.Max(1, (int)(Math.Log2(MostStates) / Math.Log2(units)));
        _words = (draws + DigitsPerWord - 1) / DigitsPerWord;
    }

    public int Units { get; }

    public int Draws { get; }

    public int DigitsPerWord { get; }

    /// <summary>Position of the first word of a resample.</summary>
    public ulong Start(int resample) => _key + Step * ((ulong)resample * (ulong)_words);

    /// <summary>Positions of the first words of eight resamples.</summary>
    public Vector512<ulong> StartOfEight(int first)
        => Vector512.Create(_key + Step * ((ulong)first * (ulong)_words)) + Vector512.CreateSequence(0UL, Step * (ulong)_words);

    /// <summary>One word of each of eight resamples, the same that <see cref="Next(ref ulong)"/> gives at these positions. By value: a vector on the stack may lie across two cache lines.</summary>
    public static Vector512<ulong> At(Vector512<ulong> positions)
    {
        var z = positions;
        z = (z ^ (z >>> 30)) * Vector512.Create(0xBF58476D1CE4E5B9);
        z = (z ^ (z >>> 27)) * Vector512.Create(0x94D049BB133111EB);
        return z ^ (z >>> 31);
    }

    /// <summary>The positions of the words after these.</summary>
    public static Vector512<ulong> After(Vector512<ulong> positions) => positions + Vector512.Create(Step);

    /// <summary>The word at a position; moves the position on.</summary>
    public static ulong Next(ref ulong position)
    {
        var word = Finish(position);
        position += Step;
        return word;
    }

    /// <summary>Writes the unit numbers (from 0) of one resample.</summary>
    public void Fill(int resample, Span<int> units)
    {
        var position = Start(resample);
        if (Units <= MostForPairs) FillFromHalves(position, units);
        else FillFromWords(position, units);
    }

    private void FillFromHalves(ulong position, Span<int> units)
    {
        var n = (ulong)Units;
        for (var at = 0; at < units.Length;)
        {
            var word = Next(ref position);
            for (var half = 0; half < 2 && at < units.Length; half++, word >>= 32)
            {
                var first = (uint)word * n;
                units[at++] = (int)(first >> 32);
                if (at < units.Length) units[at++] = (int)((uint)first * n >> 32);
            }
        }
    }

    private void FillFromWords(ulong position, Span<int> units)
    {
        var n = (ulong)Units;
        for (var at = 0; at < units.Length;)
        {
            var fraction = Next(ref position);
            for (var end = Math.Min(at + DigitsPerWord, units.Length); at < end; at++)
                units[at] = (int)Math.BigMul(fraction, n, out fraction);
        }
    }

    private static ulong Finish(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return z ^ (z >> 31);
    }
}

using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace Analytics.Season.Sharing;

/// <summary>Short codes for athletes: HMAC-SHA256 of the identifier under the season's key, in letters and figures that are not taken for one another.</summary>
internal static class AthleteCodes
{
    private const int Length = 5;

    // No 0 and O, 1, I and L, 2 and Z, 5 and S, 8 and B; no vowels, so that no code is a word.
    private const string Alphabet = "34679CDFGHJKMNPQRTVWXY";

    /// <summary>The codes, by identifier.</summary>
    /// <param name="athletes">The athletes.</param>
    /// <param name="key">The season's key.</param>
    /// <param name="isTaken">Words no code may be, such as identifiers.</param>
    public static IReadOnlyDictionary<string, string> Of(IEnumerable<Athlete> athletes, byte[] key, Func<string, bool> isTaken)
    {
        var codes = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        var used = new HashSet<string>(StringComparer.Ordinal);
        // Of two that would have the same code the first keeps it; joining an earlier season must not change that.
        foreach (var athlete in athletes.OrderByDescending(a => a.InLatestSeason).ThenBy(a => a.Id, StringComparer.Ordinal))
        {
            var attempt = 0;
            string code;
            do code = Code(athlete.Id, key, attempt++);
            while (code.All(char.IsAsciiDigit) || isTaken(code) || !used.Add(code));
            codes[athlete.Id] = code;
        }

        return codes;
    }

    private static string Code(string id, byte[] key, int attempt)
    {
        // The case of an identifier does not matter elsewhere either.
        var digest = HMACSHA256.HashData(key, Encoding.UTF8.GetBytes(FormattableString.Invariant($"athlete\n{id.ToUpperInvariant()}\n{attempt}")));
        var rest = BinaryPrimitives.ReadUInt64BigEndian(digest);
        return string.Create(Length, rest, (code, value) =>
        {
            for (var i = 0; i < code.Length; i++, value /= (ulong)Alphabet.Length) code[i] = Alphabet[(int)(value % (ulong)Alphabet.Length)];
        });
    }
}

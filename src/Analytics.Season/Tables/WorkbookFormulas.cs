using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Analytics.Season.Tables;

/// <summary>
/// Makes cells whose formula failed, or was never worked out, readable as text (<c>#DIV/0!</c>): the workbook package gives
/// them as empty, and an empty cell would pass as a test that was not done.
/// </summary>
internal static partial class WorkbookFormulas
{
    /// <summary>Text of a formula without a value.</summary>
    private const string NotWorkedOut = "#NOT CALCULATED";

    /// <summary>The workbook with such cells as text; the same bytes when there are none.</summary>
    /// <param name="bytes">A workbook that passed <see cref="WorkbookGuard"/>.</param>
    public static byte[] AsText(byte[] bytes)
    {
        using var source = new ZipArchive(new MemoryStream(bytes, writable: false), ZipArchiveMode.Read);
        var changed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in source.Entries.Where(e => e.FullName.Contains("worksheets/", StringComparison.OrdinalIgnoreCase)))
        {
            var sheet = Read(entry);
            if (sheet.AsSpan().IndexOf(" t=\"e\""u8) < 0 && sheet.AsSpan().IndexOf("<f"u8) < 0 && sheet.AsSpan().IndexOf(":f"u8) < 0) continue;
            var text = Encoding.UTF8.GetString(sheet);
            var mended = Empty().Replace(Failed().Replace(text, "$1 t=\"str\""), NoValue);
            if (mended != text) changed[entry.FullName] = mended;
        }

        return changed.Count is 0 ? bytes : Rewrite(source, changed);
    }

    private static string NoValue(Match match)
    {
        var prefix = match.Groups["p"].Value;
        return $"{Type().Replace(match.Groups["c"].Value, "")} t=\"str\"><{prefix}v>{NotWorkedOut}</{prefix}v></{prefix}c>";
    }

    private static byte[] Rewrite(ZipArchive source, Dictionary<string, string> changed)
    {
        using var memory = new MemoryStream();
        using (var target = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var entry in source.Entries)
            {
                using var part = target.CreateEntry(entry.FullName, CompressionLevel.NoCompression).Open();
                part.Write(changed.TryGetValue(entry.FullName, out var text) ? Encoding.UTF8.GetBytes(text) : Read(entry));
            }
        }

        return memory.ToArray();
    }

    private static byte[] Read(ZipArchiveEntry entry)
    {
        using var part = entry.Open();
        using var memory = new MemoryStream();
        part.CopyTo(memory);
        return memory.ToArray();
    }

    [GeneratedRegex("""(<(?:\w+:)?c\b[^<>]*?) t="e"(?=[^<>]*>)""")]
    private static partial Regex Failed();

    /// <summary>A cell with a formula and no value.</summary>
    [GeneratedRegex("""(?<c><(?<p>(?:\w+:)?)c\b[^<>]*)(?<!/)>\s*<(?:\w+:)?f\b(?:[^<>]*/>|[^<>]*>[^<]*</(?:\w+:)?f>)\s*(?:<(?:\w+:)?v\s*/>|<(?:\w+:)?v>\s*</(?:\w+:)?v>)?\s*</(?:\w+:)?c>""")]
    private static partial Regex Empty();

    [GeneratedRegex("\\st=\"\\w+\"")]
    private static partial Regex Type();
}

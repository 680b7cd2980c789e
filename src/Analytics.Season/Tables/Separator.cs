using Analytics.Season.Files;

namespace Analytics.Season.Tables;

/// <summary>Finds what separates the columns, from the head line.</summary>
internal static class Separator
{
    /// <summary>Comma, semicolon or tab.</summary>
    /// <param name="utf8">The text; a first line <c>sep=;</c> decides by itself.</param>
    /// <exception cref="InputFault">The columns are separated by something else.</exception>
    public static char Of(ReadOnlySpan<byte> utf8)
    {
        var head = Head(utf8);
        if (head.Length is 5 && head.StartsWith("sep="u8)) return Known((char)head[4]);
        int commas = 0, semicolons = 0, tabs = 0, bars = 0;
        var quoted = false;
        foreach (var b in head)
        {
            if (b is (byte)'"') quoted = !quoted;
            else if (quoted) continue;
            else if (b is (byte)',') commas++;
            else if (b is (byte)';') semicolons++;
            else if (b is (byte)'\t') tabs++;
            else if (b is (byte)'|') bars++;
        }

        if (bars > 0 && commas + semicolons + tabs is 0) return Known('|');
        return tabs > Math.Max(commas, semicolons) ? '\t' : semicolons > commas ? ';' : ',';
    }

    private static char Known(char separator) => separator is ',' or ';' or '\t'
        ? separator
        : throw new InputFault($"the columns are separated by '{separator}'.", "Save the file with commas, semicolons or tabs between the columns.");

    private static ReadOnlySpan<byte> Head(ReadOnlySpan<byte> utf8)
    {
        foreach (var range in utf8.SplitAny((byte)'\r', (byte)'\n'))
        {
            var line = utf8[range].Trim((byte)' ');
            if (line.Length > 0) return line;
        }

        return [];
    }
}

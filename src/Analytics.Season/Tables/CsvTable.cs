using System.Text;
using Analytics.Season.Files;
using CsvHelper;

namespace Analytics.Season.Tables;

/// <summary>A table from a text file with separated columns.</summary>
internal sealed class CsvTable : Table
{
    private readonly ReadOnlyMemory<byte> utf8;
    private readonly char separator;

    private CsvTable(FileContent file, ReadOnlyMemory<byte> utf8, char separator) : base(file.Path, file.Sha256)
    {
        this.utf8 = utf8;
        this.separator = separator;
    }

    /// <inheritdoc/>
    public override bool CommaIsFree => separator != ',';

    /// <summary>Opens a file as a table.</summary>
    /// <param name="file">The file.</param>
    /// <param name="remark">What was assumed about its text, or null.</param>
    /// <exception cref="InputFault">Not text, or without a head.</exception>
    public static CsvTable Open(FileContent file, out string? remark)
    {
        var utf8 = TextBytes.ToUtf8(file.Bytes, out remark);
        var separator = Separator.Of(utf8.Span);
        using var reader = Reader(utf8, separator, null);
        while (reader.Read())
        {
            var head = reader.Current.ToArray();
            if (IsBlank(head) || IsHint(head)) continue;
            return new CsvTable(file, utf8, separator) { Head = head, HeadLine = (int)reader.LineNumber };
        }

        throw new InputFault("the file has no head line.", "Write the column names in the first line.");
    }

    /// <inheritdoc/>
    public override IEnumerable<TableRow> Rows()
    {
        var open = false;
        using var reader = Reader(utf8, separator, bad => open |= bad.Reason is CsvMalformedReason.UnterminatedQuote);
        var cells = new string[Head.Count];
        while (reader.Read())
        {
            if (reader.LineNumber <= HeadLine) continue;
            var count = reader.FieldCount;
            if (count > cells.Length) Array.Resize(ref cells, count);
            for (var i = 0; i < count; i++) cells[i] = reader.GetString(i);
            if (IsBlank(cells.AsSpan(0, count))) continue;
            yield return new TableRow((int)reader.LineNumber, cells, count, open ? FilledLines(reader.RawRecord) : 0);
        }
    }

    private static CsvReader Reader(ReadOnlyMemory<byte> utf8, char separator, Action<CsvMalformedRecord>? malformed) => CsvReader.Create(utf8, new CsvReaderOptions
    {
        Separator = separator,
        HasHeader = false,
        SkipEmptyLines = true,
        TrackLineNumbers = true,
        TrimWhitespace = true,
        // Identifiers and words repeat: each is made once.
        PoolStrings = true,
        OnMalformedRecord = malformed,
    });

    private static bool IsHint(string[] head) => head[0].StartsWith("sep=", StringComparison.Ordinal);

    private static int FilledLines(ReadOnlySpan<byte> record)
    {
        var lines = 0;
        foreach (var line in record.SplitAny((byte)'\r', (byte)'\n'))
            if (!record[line].Trim(" \t"u8).IsEmpty) lines++;
        return lines;
    }
}

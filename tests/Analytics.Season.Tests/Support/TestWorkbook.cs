using System.Globalization;
using System.IO.Compression;
using System.Text;

namespace Analytics.Season.Tests.Support;

/// <summary>A small .xlsx writer (ECMA-376), so that tests do not depend on the library they test.</summary>
internal static class TestWorkbook
{
    /// <summary>A workbook of sheets; a cell is a string, a double, a <see cref="DateOnly"/>, a raw cell element, or null.</summary>
    public static byte[] Of(params (string Name, object?[][] Rows)[] sheets)
    {
        var parts = new List<(string, string)>
        {
            ("[Content_Types].xml", "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/></Types>"),
            ("_rels/.rels", "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"r1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"),
            ("xl/workbook.xml", $"<workbook xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\"><sheets>{string.Concat(sheets.Select((s, i) => $"<sheet name=\"{s.Name}\" sheetId=\"{i + 1}\" r:id=\"s{i + 1}\"/>"))}</sheets></workbook>"),
            ("xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">{string.Concat(sheets.Select((_, i) => $"<Relationship Id=\"s{i + 1}\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet\" Target=\"worksheets/sheet{i + 1}.xml\"/>"))}<Relationship Id=\"st\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles\" Target=\"styles.xml\"/></Relationships>"),
            // Style 1 is number format 14, a date.
            ("xl/styles.xml", "<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><cellXfs count=\"2\"><xf numFmtId=\"0\"/><xf numFmtId=\"14\" applyNumberFormat=\"1\"/></cellXfs></styleSheet>"),
        };
        parts.AddRange(sheets.Select((s, i) => ($"xl/worksheets/sheet{i + 1}.xml", Sheet(s.Rows))));
        return Zip([.. parts.Select(p => (p.Item1, Encoding.UTF8.GetBytes(p.Item2)))]);
    }

    public static byte[] Zip(params (string Name, byte[] Bytes)[] parts)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, bytes) in parts)
            {
                using var part = zip.CreateEntry(name, CompressionLevel.Optimal).Open();
                part.Write(bytes);
            }
        }

        return memory.ToArray();
    }

    private static string Sheet(object?[][] rows)
        => $"<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>{string.Concat(rows.Select((r, i) => $"<row r=\"{i + 1}\">{string.Concat(r.Select((c, j) => Cell($"{(char)('A' + j)}{i + 1}", c)))}</row>"))}</sheetData></worksheet>";

    private static string Cell(string place, object? value) => value switch
    {
        null => "",
        double number => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\"><v>{number:R}</v></c>"),
        DateOnly date => string.Create(CultureInfo.InvariantCulture, $"<c r=\"{place}\" s=\"1\"><v>{date.ToDateTime(TimeOnly.MinValue).ToOADate():R}</v></c>"),
        string text when text.StartsWith("<c", StringComparison.Ordinal) => text.Replace("@", place, StringComparison.Ordinal),
        _ => $"<c r=\"{place}\" t=\"inlineStr\"><is><t>{System.Security.SecurityElement.Escape(value.ToString())}</t></is></c>",
    };
}

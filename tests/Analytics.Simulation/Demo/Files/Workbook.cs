using System.Globalization;
using System.Security;
using System.Text;

namespace Analytics.Simulation.Demo.Files;

/// <summary>A minimal .xlsx workbook (ECMA-376): one worksheet a sheet, numbers as numbers, text inline.</summary>
public static class Workbook
{
    private const string Head = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";
    private const string Types = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

    public static byte[] Write(IReadOnlyList<Sheet> sheets)
    {
        var types = new StringBuilder();
        var list = new StringBuilder();
        var links = new StringBuilder();
        var parts = new List<(string, string)>();
        for (var i = 1; i <= sheets.Count; i++)
        {
            types.Append(CultureInfo.InvariantCulture, $"<Override PartName=\"/xl/worksheets/sheet{i}.xml\" ContentType=\"{Types}worksheet+xml\"/>");
            list.Append(CultureInfo.InvariantCulture, $"<sheet name=\"{SecurityElement.Escape(sheets[i - 1].Name)}\" sheetId=\"{i}\" r:id=\"rId{i}\"/>");
            links.Append(CultureInfo.InvariantCulture, $"<Relationship Id=\"rId{i}\" Type=\"{Office}/worksheet\" Target=\"worksheets/sheet{i}.xml\"/>");
            parts.Add(($"xl/worksheets/sheet{i}.xml", Worksheet(sheets[i - 1])));
        }

        return StoredZip.Write(
        [
            ("[Content_Types].xml", $"{Head}<Types xmlns=\"{Package}/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"{Types}sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\"{Types}styles+xml\"/>{types}</Types>"),
            ("_rels/.rels", $"{Head}<Relationships xmlns=\"{Package}/relationships\"><Relationship Id=\"rId1\" Type=\"{Office}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>"),
            ("xl/workbook.xml", $"{Head}<workbook xmlns=\"{Main}\" xmlns:r=\"{Office}\"><sheets>{list}</sheets></workbook>"),
            ("xl/_rels/workbook.xml.rels", $"{Head}<Relationships xmlns=\"{Package}/relationships\">{links}<Relationship Id=\"rId{sheets.Count + 1}\" Type=\"{Office}/styles\" Target=\"styles.xml\"/></Relationships>"),
            ("xl/styles.xml", $"{Head}<styleSheet xmlns=\"{Main}\"><fonts count=\"1\"><font><sz val=\"11\"/><name val=\"Arial\"/></font></fonts><fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills><borders count=\"1\"><border/></borders><cellStyleXfs count=\"1\"><xf/></cellStyleXfs><cellXfs count=\"1\"><xf xfId=\"0\"/></cellXfs></styleSheet>"),
            .. parts,
        ]);
    }

    private static string Worksheet(Sheet sheet)
    {
        var xml = new StringBuilder(Head).Append("<worksheet xmlns=\"").Append(Main).Append("\"><sheetData>");
        AppendRow(xml, 1, sheet.Columns);
        for (var i = 0; i < sheet.Rows.Count; i++) AppendRow(xml, i + 2, sheet.Rows[i]);
        return xml.Append("</sheetData></worksheet>").ToString();
    }

    private static void AppendRow(StringBuilder xml, int number, IReadOnlyList<string> cells)
    {
        xml.Append(CultureInfo.InvariantCulture, $"<row r=\"{number}\">");
        for (var i = 0; i < cells.Count; i++)
        {
            if (cells[i].Length == 0) continue;
            var place = (char)('A' + i);
            if (double.TryParse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture, out _))
                xml.Append(CultureInfo.InvariantCulture, $"<c r=\"{place}{number}\"><v>{cells[i]}</v></c>");
            else
                xml.Append(CultureInfo.InvariantCulture, $"<c r=\"{place}{number}\" t=\"inlineStr\"><is><t>{SecurityElement.Escape(cells[i])}</t></is></c>");
        }

        xml.Append("</row>");
    }
}

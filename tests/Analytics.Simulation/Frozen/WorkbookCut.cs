using System.IO.Compression;
using System.Xml.Linq;
using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.Frozen;

/// <summary>Leaves rows out of a workbook as <see cref="Workbook"/> writes it: the athlete stands in the first column, text stands inside the cells.</summary>
internal static class WorkbookCut
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    public static byte[] Rows(byte[] workbook, IReadOnlySet<string> athletes)
    {
        using var archive = new ZipArchive(new MemoryStream(workbook), ZipArchiveMode.Read);
        var names = Read(archive, "xl/workbook.xml").Descendants(Main + "sheet").Select(s => (string)s.Attribute("name")!);
        return Workbook.Write([.. names.Select((name, i) => Cut(name, Read(archive, FormattableString.Invariant($"xl/worksheets/sheet{i + 1}.xml")), athletes))]);
    }

    private static Sheet Cut(string name, XDocument worksheet, IReadOnlySet<string> athletes)
    {
        var rows = worksheet.Descendants(Main + "row").ToList();
        var heads = rows[0].Elements(Main + "c").Select(c => c.Value).ToArray();
        var sheet = new Sheet(name, heads);
        foreach (var row in rows.Skip(1))
        {
            var cells = new string[heads.Length];
            foreach (var cell in row.Elements(Main + "c")) cells[((string)cell.Attribute("r")!)[0] - 'A'] = cell.Value;
            if (athletes.Contains(cells[0])) sheet.Add(cells);
        }

        return sheet;
    }

    private static XDocument Read(ZipArchive archive, string part)
    {
        using var stream = archive.GetEntry(part)!.Open();
        return XDocument.Load(stream);
    }
}

using System.Globalization;

namespace Analytics.Simulation.Demo.Files;

/// <summary>The sheets of one testing day and how they are kept: a folder of CSV files or one workbook.</summary>
/// <param name="Date">The day.</param>
/// <param name="Sheets">Its sheets; empty ones are not written.</param>
/// <param name="Csv">How the CSV files are written; null for a workbook.</param>
public sealed record TestingDay(DateOnly Date, IReadOnlyList<Sheet> Sheets, CsvText? Csv)
{
    /// <summary>Clip files: points, time stamps. Always CSV, in the folder of the day.</summary>
    public IReadOnlyList<Sheet> Clips { get; init; } = [];

    private string Name => "testing/" + Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    public Sheet Sheet(string name) => Sheets.First(s => s.Name == name);

    /// <summary>Where a sheet stands in the season folder.</summary>
    public string PathOf(string sheet) => Csv is null ? $"{Name}.xlsx#{sheet}" : $"{Name}/{sheet}.csv";

    /// <summary>A cell as it stands in the file.</summary>
    public string Cell(string cell) => Csv?.Cell(cell) ?? cell;

    public IEnumerable<(string Path, byte[] Bytes)> Write()
    {
        var filled = Sheets.Where(s => s.Rows.Count > 0).ToList();
        var clips = Clips.Select(c => ($"{Name}/clips/{c.Name}.csv", CsvText.Plain.Write(c)));
        return Csv is null ? [($"{Name}.xlsx", Workbook.Write(filled)), .. clips] : [.. filled.Select(s => (PathOf(s.Name), Csv.Write(s))), .. clips];
    }
}

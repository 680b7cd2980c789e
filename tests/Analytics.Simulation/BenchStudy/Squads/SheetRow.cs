using System.Globalization;
using Analytics.Quantities;
using Analytics.Simulation.Demo.Files;

namespace Analytics.Simulation.BenchStudy.Squads;

/// <summary>A row of a generated sheet, its cells by column name.</summary>
internal readonly record struct SheetRow(Sheet Sheet, string[] Cells)
{
    public string Athlete => this["athlete_id"];

    /// <summary>A cell; empty where the sheet has no such column.</summary>
    public string this[string column]
    {
        get
        {
            for (var i = 0; i < Sheet.Columns.Count; i++)
                if (Sheet.Columns[i] == column) return Cells[i];
            return "";
        }
    }

    public double? Number(string column) => this[column] is { Length: > 0 } cell ? double.Parse(cell, CultureInfo.InvariantCulture) : null;

    public int Whole(string column) => int.Parse(this[column], CultureInfo.InvariantCulture);

    public Length? Inches(string column) => Number(column) is { } v ? Length.FromInches(v) : null;

    public Duration? Milliseconds(string column) => Number(column) is { } v ? Duration.FromMilliseconds(v) : null;

    public string? Tester => this["tester"] is { Length: > 0 } name ? name : null;
}

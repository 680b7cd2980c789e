using System.Globalization;

namespace Analytics.Simulation.Demo.Files;

/// <summary>A table of text cells with a head: what a CSV file or a sheet of a workbook will hold.</summary>
public sealed class Sheet(string name, params string[] columns)
{
    private readonly List<string[]> _rows = [];

    public string Name { get; } = name;

    public IReadOnlyList<string> Columns { get; } = columns;

    public IReadOnlyList<string[]> Rows => _rows;

    /// <summary>Appends a row; numbers in invariant text, null as an empty cell.</summary>
    public void Add(params ReadOnlySpan<object?> cells)
    {
        if (cells.Length != Columns.Count)
            throw new ArgumentException($"{Name}: {cells.Length} cells for {Columns.Count} columns.", nameof(cells));
        var row = new string[cells.Length];
        for (var i = 0; i < cells.Length; i++) row[i] = Convert.ToString(cells[i], CultureInfo.InvariantCulture) ?? "";
        _rows.Add(row);
    }

    public int Column(string name)
    {
        for (var i = 0; i < Columns.Count; i++)
            if (Columns[i] == name) return i;
        throw new ArgumentException($"{Name} has no column '{name}', only {string.Join(", ", Columns)}.", nameof(name));
    }

    /// <summary>A number rounded to so many decimals, as written on a test sheet.</summary>
    public static string Fixed(double value, int decimals)
        => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}

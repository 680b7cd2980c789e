using Analytics.Season.Cells;
using Analytics.Season.Files;
using Analytics.Season.Tables;

namespace Analytics.Season.Columns;

/// <summary>Which known column stands where in a table, and in which unit.</summary>
internal sealed class HeadMap
{
    private readonly Dictionary<Column, List<Binding>> bindings = [];
    private readonly List<int> unnamed = [];
    private readonly List<(QuantityColumn Quantity, bool IsBare, string Written)> withoutUnit = [];

    /// <summary>Places of columns without a head: harmless when empty; a row with a value there is held back as it is read.</summary>
    public IReadOnlyList<int> UnnamedColumns => unnamed;

    /// <summary>Gates found in the head of a sprint table, by rising distance.</summary>
    public IReadOnlyList<QuantityColumn> Gates { get; private set; } = [];

    /// <summary>Remarks about columns that were not read.</summary>
    public List<string> Remarks { get; } = [];

    /// <summary>The places of a column; more than one when it stands there in several units.</summary>
    public IReadOnlyList<Binding> this[Column column] => bindings.TryGetValue(column, out var found) ? found : [];

    /// <summary>The head as written, else the plain name.</summary>
    public string HeadOf(Column column) => this[column] is [var first, ..] ? first.Head : column.Name;

    /// <summary>Matches a head with the columns a table may have.</summary>
    /// <param name="table">The table.</param>
    /// <param name="columns">Known columns.</param>
    /// <param name="withGates">Whether timing-gate columns are accepted.</param>
    /// <exception cref="InputFault">A needed column, or a unit, is missing or unknown, or a column stands there twice.</exception>
    public static HeadMap Of(Table table, IReadOnlyList<Column> columns, bool withGates = false)
    {
        var map = new HeadMap();
        var byHead = columns.SelectMany(c => c.Heads.Concat(c.Synonyms).Select(h => (h, c))).ToDictionary(p => p.h, p => p.c, StringComparer.Ordinal);
        var gates = new List<QuantityColumn>();
        for (var i = 0; i < table.Head.Count; i++)
        {
            var written = table.Head[i].Trim();
            var normal = Words.Normal(written);
            if (normal.Length is 0) map.unnamed.Add(i);
            else if (byHead.TryGetValue(normal, out var column)) map.Bind(column, normal, i, written);
            else if (withGates && GateHead.Read(normal) is { } gate) map.BindGate(gates, gate, i, written);
            else map.Refuse(columns, normal, written, withGates);
        }

        map.SettleColumnsWithoutUnit();
        map.Gates = [.. gates.OrderBy(g => g.Gate)];
        foreach (var missing in columns.Where(c => c.Needed && map[c].Count is 0)) throw Missing(table, missing);
        return map;
    }

    private void Bind(Column column, string normal, int index, string written)
    {
        var unit = column is QuantityColumn quantity ? quantity.Units.Single(u => normal == $"{quantity.Name}_{u.Symbol}") : null;
        if (this[column].FirstOrDefault(b => b.Unit == unit) is { } twin)
            throw new InputFault($"the head has the column '{CellText.Show(written)}' twice (columns {twin.Index + 1} and {index + 1}).", "Delete or rename one of them.", written);
        if (!bindings.TryGetValue(column, out var list)) bindings.Add(column, list = []);
        list.Add(new Binding(index, written, unit));
    }

    private void BindGate(List<QuantityColumn> gates, QuantityColumn gate, int index, string written)
    {
        if (gates.FirstOrDefault(g => Math.Abs(g.Gate!.Value - gate.Gate!.Value) < 0.01) is { } twin)
            throw new InputFault($"the head has two columns for the same gate: '{CellText.Show(HeadOf(twin))}' and '{CellText.Show(written)}'.", "Delete one of them.", written);
        gates.Add(gate);
        bindings.Add(gate, [new Binding(index, written, gate.Units[0])]);
    }

    /// <summary>A head that is not known: a fault where a unit is missing, else a remark.</summary>
    private void Refuse(IReadOnlyList<Column> columns, string normal, string written, bool withGates)
    {
        if (withGates && GateHead.LacksUnit(normal))
            throw new InputFault($"the gate column '{CellText.Show(written)}' does not say its units.", "Name gates by distance and time unit: t_10yd_s, t_10m_s, t_40yd_s.", written);
        if (columns.OfType<QuantityColumn>().FirstOrDefault(q => IsWithoutUnit(q, normal)) is { } meant)
        {
            withoutUnit.Add((meant, normal == meant.Name, written));
            return;
        }

        var near = NearWord.Of(normal, columns.SelectMany(c => c.Heads));
        var hint = near is null ? "." : $"; did you mean {near}?";
        Remarks.Add($"The column '{CellText.Show(written)}' is not known and was not read{hint}");
    }

    /// <summary>Whether a head is that of a quantity with no unit, or with what looks like another unit.</summary>
    private static bool IsWithoutUnit(QuantityColumn quantity, string normal)
        => normal == quantity.Name || (normal.StartsWith(quantity.Name + "_", StringComparison.Ordinal) && normal.Length - quantity.Name.Length <= 5);

    /// <summary>Where the quantity stands there with its unit as well, a second column without is only remarked.</summary>
    private void SettleColumnsWithoutUnit()
    {
        foreach (var (quantity, isBare, written) in withoutUnit)
        {
            var heads = string.Join(", ", quantity.Heads);
            var what = isBare ? $"the column '{CellText.Show(written)}' does not say its unit" : $"the unit of the column '{CellText.Show(written)}' is not known";
            if (this[quantity].Count is 0) throw new InputFault(what + ".", isBare ? $"Name it with its unit; accepted: {heads}." : $"Accepted: {heads}.", written);
            Remarks.Add($"{char.ToUpperInvariant(what[0])}{what[1..]}, so it was not read; '{HeadOf(quantity)}' was.");
        }
    }

    private static InputFault Missing(Table table, Column column)
    {
        var heads = string.Join(" or ", column.Heads);
        var there = string.Join(", ", table.Head.Where(h => h.Trim().Length > 0).Take(12).Select(CellText.Show));
        return new InputFault($"the column {heads} is missing; the head has: {there}.", $"Add a column {heads}, or check that the first line is the head.");
    }
}

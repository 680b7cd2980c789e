namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Collects, for one section, which rows of r-and-published.tsv are checked against what, and which are not and why.</summary>
public sealed class AccuracyBook
{
    /// <summary>Relative difference allowed where the oracle states nothing coarser.</summary>
    public const double Usual = 1e-8;

    private readonly Dictionary<(string Case, string Quantity), OracleValue> _open;
    private readonly List<AccuracyCheck> _checks = [];
    private readonly List<(string Case, int Rows, string Reason)> _notChecked = [];

    internal AccuracyBook(IEnumerable<OracleValue> rows) => _open = rows.ToDictionary(r => (r.Case, r.Quantity));

    internal IReadOnlyList<AccuracyCheck> Checks => _checks;

    internal IReadOnlyList<(string Case, int Rows, string Reason)> NotChecked => _notChecked;

    internal IReadOnlyCollection<OracleValue> Open => _open.Values;

    /// <summary>A row the library must reproduce.</summary>
    /// <param name="case">Its case.</param>
    /// <param name="quantity">Its quantity.</param>
    /// <param name="actual">What the library gives.</param>
    /// <param name="relative">Relative difference allowed; above <see cref="Usual"/> only where the oracle itself is coarser.</param>
    /// <param name="why">Why a coarser difference is allowed; needed when it is.</param>
    public void Check(string @case, string quantity, double actual, double relative = Usual, string why = "")
        => Add(Take(@case, quantity), actual, relative, 0, why);

    /// <summary>A row held by an absolute difference: an expected value of 0, or one that carries its own error.</summary>
    public void CheckAbsolute(string @case, string quantity, double actual, double absolute, string why)
        => Add(Take(@case, quantity), actual, 0, absolute, why);

    /// <summary>A figure from outside that stands in no row of the file (a certified value, a printed one).</summary>
    public void CheckPublished(string @case, string quantity, double expected, double actual, double relative, string source)
        => Add(new(@case, quantity, expected, source), actual, relative, 0, source, published: true);

    /// <summary>Rows the library does not reproduce on purpose.</summary>
    /// <param name="case">Their case.</param>
    /// <param name="reason">Why, in a sentence of the document.</param>
    /// <param name="quantities">Which; none for all rows of the case not yet taken.</param>
    public void Leave(string @case, string reason, params string[] quantities)
    {
        var taken = quantities.Length > 0 ? quantities : [.. _open.Keys.Where(k => k.Case == @case).Select(k => k.Quantity)];
        foreach (var quantity in taken) Take(@case, quantity);
        _notChecked.Add((@case, taken.Length, reason));
    }

    /// <summary>Names of the rows of a case that are still open.</summary>
    public IReadOnlyList<string> Quantities(string @case) => [.. _open.Keys.Where(k => k.Case == @case).Select(k => k.Quantity)];

    /// <summary>The expected value of an open row, to tell apart rows that share a name pattern.</summary>
    public double Expected(string @case, string quantity) => _open[(@case, quantity)].Value;

    private OracleValue Take(string @case, string quantity)
        => _open.Remove((@case, quantity), out var row) ? row : throw new KeyNotFoundException($"No open row '{@case}' '{quantity}'.");

    private void Add(OracleValue row, double actual, double relative, double absolute, string why, bool published = false)
    {
        if (relative > Usual && why.Length == 0) throw new ArgumentException($"{row.Case} {row.Quantity}: a coarser tolerance needs a reason.", nameof(why));
        _checks.Add(new(row, actual, relative, absolute, why, published));
    }
}

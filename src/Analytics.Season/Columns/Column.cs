using Analytics.Quantities;

namespace Analytics.Season.Columns;

/// <summary>A column a table may have. Compared by identity.</summary>
internal class Column(string name, bool needed = false)
{
    /// <summary>Head without unit.</summary>
    public string Name { get; } = name;

    /// <summary>Whether the head must have it.</summary>
    public bool Needed { get; } = needed;

    /// <summary>Other heads accepted.</summary>
    public IReadOnlyList<string> Synonyms { get; init; } = [];

    /// <summary>The heads accepted, for messages.</summary>
    public virtual IEnumerable<string> Heads => [Name];
}

/// <summary>A plain number without unit.</summary>
/// <param name="name">Head.</param>
/// <param name="low">Lowest value allowed.</param>
/// <param name="high">Highest value allowed.</param>
/// <param name="whole">Whether it must be a whole number.</param>
/// <param name="needed">Whether the head must have it.</param>
internal sealed class NumberColumn(string name, double low, double high, bool whole = false, bool needed = false) : Column(name, needed)
{
    public double Low { get; } = low;

    public double High { get; } = high;

    public bool Whole { get; } = whole;
}

/// <summary>A number with a unit that stands in the head: <c>load_lb</c>.</summary>
/// <param name="name">Head without unit.</param>
/// <param name="units">Units accepted, the commonest first.</param>
/// <param name="low">Lowest value allowed, SI.</param>
/// <param name="high">Highest value allowed, SI.</param>
/// <param name="needed">Whether the head must have it, in one of the units.</param>
internal sealed class QuantityColumn(string name, IReadOnlyList<Unit> units, double low, double high, bool needed = false) : Column(name, needed)
{
    public IReadOnlyList<Unit> Units { get; } = units;

    public double Low { get; } = low;

    public double High { get; } = high;

    /// <summary>Distance from the start in metres, for a gate; else null.</summary>
    public double? Gate { get; init; }

    public override IEnumerable<string> Heads => Units.Select(u => $"{Name}_{u.Symbol}");
}

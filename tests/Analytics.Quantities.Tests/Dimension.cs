namespace Analytics.Quantities.Tests;

/// <summary>Powers of kilogram, metre and second in a unit, read from its SI symbol (SI Brochure, 9th edition, table 4).</summary>
internal readonly record struct Dimension(int Kilogram, int Metre, int Second)
{
    private static readonly Dictionary<string, Dimension> Symbols = new()
    {
        ["kg"] = new(1, 0, 0),
        ["m"] = new(0, 1, 0),
        ["s"] = new(0, 0, 1),
        ["s²"] = new(0, 0, 2),
        ["rad"] = default,
        ["Hz"] = new(0, 0, -1),
        ["N"] = new(1, 1, -2),
        ["J"] = new(1, 2, -2),
        ["W"] = new(1, 2, -3),
    };

    public static Dimension Of(Type quantity)
    {
        var parts = ((IQuantity)Activator.CreateInstance(quantity)!).SiUnit.Split('/');
        var over = parts.Length > 1 ? Product(parts[1]) : default;
        return Product(parts[0]).Over(over);
    }

    /// <summary>Powers of the library's dimension, angle left out: the radian is a bare number in the SI.</summary>
    public static Dimension OfUnit(Quantities.Dimension dimension) => new((int)dimension.Mass, (int)dimension.Length, (int)dimension.Time);

    public Dimension Times(Dimension other) => new(Kilogram + other.Kilogram, Metre + other.Metre, Second + other.Second);

    public Dimension Over(Dimension other) => new(Kilogram - other.Kilogram, Metre - other.Metre, Second - other.Second);

    private static Dimension Product(string symbols) => symbols.Split('·').Aggregate(default(Dimension), (d, s) => d.Times(Symbols[s]));
}

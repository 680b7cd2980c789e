namespace Analytics.Quantities;

/// <summary>A unit of measure: its symbol and how many SI units it makes.</summary>
public sealed record Unit
{
    // Parts of ten, of sixty, ... are divided by: 57 cm is then exactly 0.57 m, where 57 × 0.01 is not.
    private readonly double _parts;

    /// <summary>Defines a unit.</summary>
    /// <param name="symbol">Symbol as written after a number, for example <c>lb</c>.</param>
    /// <param name="toSi">SI units in one of this unit, finite and above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">Factor not finite or not above 0.</exception>
    public Unit(string symbol, double toSi)
    {
        Symbol = symbol;
        ToSi = toSi > 0 && double.IsFinite(toSi) ? toSi : throw Guard.Out(nameof(toSi), toSi, "the factor of a unit must be finite and above 0");
        var parts = Math.Round(1 / toSi);
        _parts = toSi < 1 && 1 / parts == toSi ? parts : 0;
    }

    /// <summary>Symbol as written after a number.</summary>
    public string Symbol { get; }

    /// <summary>SI units in one of this unit.</summary>
    public double ToSi { get; }

    /// <summary>The SI magnitude of a number of this unit.</summary>
    /// <param name="number">Number of this unit.</param>
    public double SiOf(double number) => _parts > 0 ? number / _parts : number * ToSi;

    /// <summary>The number of this unit in an SI magnitude.</summary>
    /// <param name="si">SI magnitude.</param>
    public double NumberOf(double si) => _parts > 0 ? si * _parts : si / ToSi;
}

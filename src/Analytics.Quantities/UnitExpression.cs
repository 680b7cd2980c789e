using System.Globalization;

namespace Analytics.Quantities;

/// <summary>A unit written out of others, for example <c>kg·m/s</c>, <c>°/(N·s)</c>, <c>kg/kg^0.67</c>, <c>%</c> or <c>1</c>, with its size and dimension.</summary>
/// <remarks>
/// Known are the unit symbols of all quantities of this library, <c>deg</c> for °, <c>1</c> and <c>%</c>. They are joined by <c>·</c> or <c>*</c> and <c>/</c>, read from left
/// to right, with powers (<c>^2</c>, <c>²</c>, <c>³</c>, <c>^0.67</c>, <c>^-1</c>) and parentheses.
/// </remarks>
public sealed record UnitExpression
{
    private UnitExpression(string text, double toSi, Dimension dimension) => (Text, ToSi, Dimension) = (text, toSi, dimension);

    /// <summary>The unit as written.</summary>
    public string Text { get; }

    /// <summary>SI units in one of this unit; above 0.</summary>
    public double ToSi { get; }

    /// <summary>Its dimension.</summary>
    public Dimension Dimension { get; }

    /// <summary>Reads a unit.</summary>
    /// <param name="text">The unit as written.</param>
    /// <exception cref="FormatException">It cannot be read; the message says which part, and what is known.</exception>
    public static UnitExpression Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var reader = new Reader(text);
        var (factor, dimension) = reader.Whole();
        return new(text, factor, dimension);
    }

    private ref struct Reader(string text)
    {
        private readonly string _text = text;
        private int _at;

        public (double Factor, Dimension Dimension) Whole()
        {
            var unit = Product();
            return _at == _text.Length ? unit : throw Wrong($"'{_text[_at..]}' cannot follow here");
        }

        private (double Factor, Dimension Dimension) Product()
        {
            var unit = Power();
            while (_at < _text.Length && _text[_at] is '·' or '*' or '/')
            {
                var over = _text[_at++] == '/';
                var next = Power();
                unit = over ? (unit.Item1 / next.Factor, unit.Item2 / next.Dimension) : (unit.Item1 * next.Factor, unit.Item2 * next.Dimension);
            }

            return unit;
        }

        private (double Factor, Dimension Dimension) Power()
        {
            var (factor, dimension) = One();
            var power = Exponent();
            return (Math.Pow(factor, power), dimension.ToPower(power));
        }

        private double Exponent()
        {
            if (_at >= _text.Length) return 1;
            if (_text[_at] is '²' or '³') return _text[_at++] == '²' ? 2 : 3;
            if (_text[_at] != '^') return 1;
            var from = ++_at;
            while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.' || (_text[_at] == '-' && _at == from))) _at++;
            return double.TryParse(_text.AsSpan(from, _at - from), NumberStyles.Float, CultureInfo.InvariantCulture, out var power) ? power : throw Wrong("a number must follow '^'");
        }

        private (double Factor, Dimension Dimension) One()
        {
            if (_at < _text.Length && _text[_at] == '(')
            {
                _at++;
                var inner = Product();
                if (_at >= _text.Length || _text[_at] != ')') throw Wrong("a ')' is missing");
                _at++;
                return inner;
            }

            var from = _at;
            while (_at < _text.Length && !"·*/^²³()".Contains(_text[_at], StringComparison.Ordinal)) _at++;
            var symbol = _text[from.._at].Trim();
            return KnownUnits.Find(symbol) ?? throw Wrong(symbol.Length == 0 ? "a unit symbol is missing" : $"'{symbol}' is not known");
        }

        private readonly FormatException Wrong(string what)
            => new($"The unit '{_text}' cannot be read: {what}. Known are {string.Join(", ", KnownUnits.Symbols)}, joined by ·, / and ^, for example kg·m/s or °/(N·s).");
    }
}

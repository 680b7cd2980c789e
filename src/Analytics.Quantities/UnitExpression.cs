using System.Globalization;

namespace Analytics.Quantities;

/// <summary>A unit written out of others, for example <c>kg·m/s</c>, <c>°/(N·s)</c>, <c>kg/kg^0.67</c>, <c>%</c> or <c>1</c>, with its size and dimension.</summary>
/// <remarks>
/// Known are the unit symbols of all quantities of this library, <c>deg</c> for °, <c>1</c> and <c>%</c>. They are joined by <c>·</c> or <c>*</c> and <c>/</c>, read from left
/// to right, with powers (<c>^2</c>, <c>²</c>, <c>³</c>, <c>^0.67</c>, <c>^-1</c>) and parentheses; spaces between them do not matter. <c>g</c> is the gram;
/// an acceleration in units of gravity is <c>g₀</c>.
/// </remarks>
public sealed record UnitExpression
{
    /// <summary>Most characters of a unit.</summary>
    public const int MostCharacters = 100;

    // The size of the unit, which goes to and from SI without new rounding of decimals: 57 cm is 0.57 m.
    private readonly Unit _size;

    private UnitExpression(string text, double toSi, Dimension dimension) => (Text, _size, Dimension) = (text, new(text, toSi), dimension);

    /// <summary>The unit as written.</summary>
    public string Text { get; }

    /// <summary>SI units in one of this unit; finite and above 0.</summary>
    public double ToSi => _size.ToSi;

    /// <summary>Its dimension.</summary>
    public Dimension Dimension { get; }

    /// <summary>Reads a unit.</summary>
    /// <param name="text">The unit as written.</param>
    /// <exception cref="FormatException">It cannot be read; the message says which part, and what is known.</exception>
    public static UnitExpression Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        // Every parenthesis is a step deeper, so the length bounds the depth.
        if (text.Length > MostCharacters) throw new FormatException($"The unit '{text[..20]}…' has {text.Length} characters; at most {MostCharacters} are allowed.");
        var reader = new Reader(text);
        var (factor, dimension) = reader.Whole();
        return new(text, factor, dimension);
    }

    /// <summary>The SI magnitude of a number of this unit.</summary>
    internal double SiOf(double number) => _size.SiOf(number);

    /// <summary>The number of this unit in an SI magnitude.</summary>
    internal double NumberOf(double si) => _size.NumberOf(si);

    private ref struct Reader(string text)
    {
        private readonly string _text = text;
        private int _at;

        public (double Factor, Dimension Dimension) Whole()
        {
            var unit = Product();
            if (_at < _text.Length) throw Wrong($"'{_text[_at..]}' cannot follow here");
            return unit.Factor > 0 && double.IsFinite(unit.Factor) ? unit : throw Wrong("its powers make it too large or too small for a number");
        }

        private (double Factor, Dimension Dimension) Product()
        {
            (double Factor, Dimension Dimension) unit = Power();
            while (_at < _text.Length && _text[_at] is '·' or '*' or '/')
            {
                var over = _text[_at++] == '/';
                var next = Power();
                unit = over ? (unit.Factor / next.Factor, unit.Dimension / next.Dimension) : (unit.Factor * next.Factor, unit.Dimension * next.Dimension);
            }

            return unit;
        }

        private (double Factor, Dimension Dimension) Power()
        {
            Spaces();
            var (factor, dimension) = One();
            Spaces();
            var power = Exponent();
            Spaces();
            return (Math.Pow(factor, power), dimension.ToPower(power));
        }

        private double Exponent()
        {
            if (_at >= _text.Length) return 1;
            if (_text[_at] is '²' or '³') return _text[_at++] == '²' ? 2 : 3;
            if (_text[_at] != '^') return 1;
            _at++;
            Spaces();
            var from = _at;
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

        private void Spaces()
        {
            while (_at < _text.Length && char.IsWhiteSpace(_text[_at])) _at++;
        }

        private readonly FormatException Wrong(string what)
            => new($"The unit '{_text}' cannot be read: {what}. Known are {string.Join(", ", KnownUnits.Symbols)}, joined by ·, / and ^, for example kg·m/s or °/(N·s).");
    }
}

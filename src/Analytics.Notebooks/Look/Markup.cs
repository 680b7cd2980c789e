using System.Globalization;
using System.Net;
using System.Runtime.CompilerServices;
using System.Text;
using System.Text.RegularExpressions;

namespace Analytics.Notebooks.Look;

/// <summary>
/// HTML under construction. The literal parts of an interpolated string are markup; what stands in the holes is
/// escaped, so a name can never become markup. Numbers are written without culture, coordinates with one decimal.
/// </summary>
public sealed partial class Markup
{
    private readonly StringBuilder _html = new();

    /// <summary>Appends an interpolated string, its holes escaped.</summary>
    /// <param name="html">Markup with holes for text, numbers or other <see cref="Markup"/>.</param>
    public Markup Add([InterpolatedStringHandlerArgument("")] ref Holes html)
    {
        _ = html;
        return this;
    }

    /// <summary>Appends markup that is already safe.</summary>
    /// <param name="html">Markup made elsewhere, its outside text escaped.</param>
    public Markup Add(Markup html)
    {
        _html.Append(html._html);
        return this;
    }

    /// <summary>Appends a literal or otherwise trusted piece of markup as it is.</summary>
    /// <param name="html">Trusted markup.</param>
    public Markup Raw(string html)
    {
        _html.Append(html);
        return this;
    }

    /// <summary>The markup as text.</summary>
    public override string ToString() => _html.ToString();

    [GeneratedRegex(@"(?<=\([+\u2212]?[\d.]{1,12}) to (?=[+\u2212]?[\d.]{1,12}\))")]
    private static partial Regex Limits();

    /// <summary>Receives the parts of an interpolated string.</summary>
    [InterpolatedStringHandler]
    public readonly ref struct Holes
    {
        private readonly StringBuilder _html;

        /// <summary>Called by the compiler.</summary>
        /// <param name="literalLength">Characters of literal text.</param>
        /// <param name="formattedCount">Number of holes.</param>
        /// <param name="markup">Where the parts go.</param>
        public Holes(int literalLength, int formattedCount, Markup markup)
        {
            _html = markup._html;
            _html.EnsureCapacity(_html.Length + literalLength + (16 * formattedCount));
        }

        /// <summary>Literal markup.</summary>
        /// <param name="value">The literal.</param>
        public void AppendLiteral(string value) => _html.Append(value);

        /// <summary>Outside text, escaped; a unit stays on the line of its number, and so do the two limits of an interval.</summary>
        /// <param name="value">Any text.</param>
        public void AppendFormatted(string? value)
            => _html.Append(KeepTogether(WebUtility.HtmlEncode(OutsideText.Visible(value ?? string.Empty))));

        private static string KeepTogether(string text)
        {
            text = text.Replace('\u2009', '\u202F');
            return text.Contains('(', StringComparison.Ordinal) ? Limits().Replace(text, "\u00A0to\u00A0") : text;
        }

        /// <summary>A coordinate: at most one decimal.</summary>
        /// <param name="value">A finite number.</param>
        public void AppendFormatted(double value) => _html.Append(value.ToString("0.#", CultureInfo.InvariantCulture));

        /// <summary>A whole number.</summary>
        /// <param name="value">The number.</param>
        public void AppendFormatted(int value) => _html.Append(value.ToString(CultureInfo.InvariantCulture));

        /// <summary>Markup that is already safe.</summary>
        /// <param name="value">The markup.</param>
        public void AppendFormatted(Markup value) => _html.Append(value._html);
    }
}

using System.Globalization;
using System.Text;
using Analytics.Metrics.Catalogue;

namespace Analytics.Cli.Promoting;

/// <summary>Writes the test file of a metric: its values on the frozen season, and a place for each figure from outside.</summary>
internal static class TestSource
{
    /// <summary>The file.</summary>
    /// <param name="metric">The metric.</param>
    /// <param name="name">Its names.</param>
    /// <param name="folder">Its folder.</param>
    /// <param name="rows">Values it gives now.</param>
    /// <param name="waive">Why no figure from outside can be held against it; null for blank places.</param>
    public static string Write(Metric metric, PromotedName name, string folder, IReadOnlyList<FrozenValue> rows, string? waive)
    {
        var text = new StringBuilder();
        foreach (var space in new[] { $"Analytics.Metrics.{folder}", "Analytics.Metrics.Tests.Catalogue", "Analytics.Metrics.Tests.Promoted" }.Order(StringComparer.Ordinal)) text.Append("using ").Append(space).Append(";\n");
        text.Append($$"""

            namespace Analytics.Metrics.Tests.{{folder}};

            public class {{name.TestClass}}
            {
                // What the formula gave on the frozen season when it was promoted: these rows say that it has not changed, not that it is right.
                [Theory]

            """.ReplaceLineEndings("\n"));
        foreach (var row in rows)
            text.Append(CultureInfo.InvariantCulture, $"    [InlineData({CSharpText.Literal(row.Athlete)}, \"{row.Date:yyyy-MM-dd}\", {Digits(row.Value)}, {CSharpText.Literal(row.Series)})]\n");
        text.Append($$"""
                public void Value_FrozenSeason_IsAsPromoted(string athlete, string date, double expected, string series)
                    => FrozenSeason.Holds({{name.Class}}.Metric, athlete, date, expected, series);

                // Figures from outside: PublishedCheck.Blank (fails), Filled or Waived.

            """.ReplaceLineEndings("\n"));
        var places = Places(metric);
        foreach (var source in places)
            text.Append(CultureInfo.InvariantCulture, $"    [Fact]\n    public void Value_{Method(source)}_Agrees() => PublishedCheck.{Check(source, waive)}.Hold({name.Class}.Metric);\n\n");
        return text.Remove(text.Length - 1, 1).Append("}\n").ToString();
    }

    /// <summary>Sources a figure may stand in; one empty when the metric names none.</summary>
    public static IReadOnlyList<string> Places(Metric metric) => metric.Sources.Count > 0 ? [.. metric.Sources.Distinct()] : [""];

    // Ten digits, see FrozenSeason.Holds of the tests. Always with a point or an exponent, so that the literal is a double.
    private static string Digits(double value)
    {
        var digits = value.ToString("G10", CultureInfo.InvariantCulture);
        return digits.AsSpan().ContainsAny('.', 'E') ? digits : digits + ".0";
    }

    private static string Method(string source) => source.Length > 0 ? char.ToUpperInvariant(source[0]) + source[1..] : "FromOutside";

    private static string Check(string source, string? waive)
        => waive is not null ? $"Waived({CSharpText.Literal(waive)})" : source.Length > 0 ? $"Blank({CSharpText.Literal(source)})" : "Blank()";
}

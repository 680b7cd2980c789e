using System.Globalization;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>A figure as a publication prints it; rows of printed.tsv.</summary>
/// <param name="Section">Section of the row it belongs to.</param>
/// <param name="Case">Case of that row.</param>
/// <param name="Quantity">Quantity of that row.</param>
/// <param name="Printed">As printed.</param>
/// <param name="Source">Key of the source.</param>
/// <param name="Print">"seen", or "memory" where the print is quoted from memory.</param>
/// <param name="Remark">Why the print is not the rounded figure; empty where it is.</param>
internal sealed record PrintedFigure(string Section, string Case, string Quantity, string Printed, string Source, string Print, string Remark)
{
    public static IReadOnlyList<PrintedFigure> All { get; } =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "oracles", "statistics", "printed.tsv")).Skip(1).Where(l => l.Length > 0)
            .Select(l => l.Split('\t')).Select(c => new PrintedFigure(c[0], c[1], c[2], c[3], c[4], c[5], c[6])),
    ];

    private int Decimals => Printed.Contains('.', StringComparison.Ordinal) ? Printed.Split('.')[1].Length : 0;

    /// <summary>Whether a figure rounds to the print.</summary>
    public bool Agrees(double actual)
        => Math.Abs(actual - double.Parse(Printed, CultureInfo.InvariantCulture)) <= 0.5 * Math.Pow(10, -Decimals) * (1 + 1e-9);

    /// <summary>A figure to one digit more than the print.</summary>
    public string InItsDigits(double actual)
        => actual.ToString("F" + (Math.Abs(actual - Math.Round(actual)) < 1e-9 && Decimals == 0 ? 0 : Decimals + 1).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}

namespace Analytics.Statistics.Results;

/// <summary>A p value inside a note: four decimals, and never a bare 0.</summary>
internal static class SheetProbability
{
    public static string Of(double p) => p < 0.0001 ? "p < 0.0001" : FormattableString.Invariant($"p {p:0.0000}");
}

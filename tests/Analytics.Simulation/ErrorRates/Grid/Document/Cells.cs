using System.Globalization;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>How figures are written: percent, the Monte Carlo standard error in brackets.</summary>
internal static class Cells
{
    public const string None = "\u2013";

    public static string Percent(double rate) => (100 * rate).ToString("0.0", CultureInfo.InvariantCulture);

    public static string Percent(double? rate) => rate is { } r ? Percent(r) : None;

    public static string Rate(RateCount count) => WithError(count.Rate, count.MonteCarloError);

    public static string Rate(VerdictResult result, params ReadOnlySpan<Verdict> verdicts)
    {
        var rate = result.Rate(verdicts);
        return WithError(rate, result.Error(rate));
    }

    /// <summary>A dash where nothing was asked, no error after a single draw.</summary>
    public static string WithError(double rate, double error) => double.IsNaN(rate) ? None : double.IsNaN(error) ? Percent(rate) : string.Create(CultureInfo.InvariantCulture, $"{100 * rate:0.0} ({100 * error:0.0#})");

    /// <summary>Least and largest, or one figure when both read the same.</summary>
    public static string Range(IReadOnlyList<double> rates)
    {
        if (rates.Count == 0) return None;
        var (low, high) = (Percent(rates.Min()), Percent(rates.Max()));
        return low == high ? low : $"{low} to {high}";
    }

    public static string Degrees(double df) => double.IsPositiveInfinity(df) ? "known" : df.ToString(CultureInfo.InvariantCulture);

    public static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

using Analytics.Metrics.Profile;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Units;

namespace Analytics.Notebooks.TestingDay;

/// <summary>A typical error in the unit of the report, or as a percentage where it grows with the value.</summary>
internal static class ErrorText
{
    public static string Of(MetricReliability reliability, ShownUnit unit)
        // Attempts of one day leave out the day: what they give is a lower bound.
        => (reliability.Source == ErrorSource.SameDayAttempts ? "at least " : "") + Figure(reliability, unit);

    private static string Figure(MetricReliability reliability, ShownUnit unit) => reliability.Error switch
    {
        null => "not known",
        { } error when reliability.Scale == ErrorScale.Proportional => Figures.Plain(error.Value * 100, 1, "%"),
        { } error => Figures.Plain(unit.Of(error.Value), Math.Max(unit.Decimals, 1), unit.Symbol),
    };
}

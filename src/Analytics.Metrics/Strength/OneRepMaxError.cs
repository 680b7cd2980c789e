using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>The standard error of an estimated 1RM, and the published figures it is built from.</summary>
/// <remarks>
/// SE² = scatter² + disagreement² + reserve².
/// <list type="bullet">
/// <item>scatter: people differ in how many repetitions they manage at the same share of their maximum. Mayhew 2004
/// (61 Division II players) found equations off by up to ± 14.1 lb; another 51 such players averaged 310.0 lb and 12.3
/// repetitions, which makes 4.5 %. It is taken to grow with the square root of the repetitions beyond the first
/// (our choice: nothing is extrapolated from a single). A person's own lasting bias is inside it.</item>
/// <item>disagreement: standard deviation between the equations that apply, since which one fits this squad is unknown.</item>
/// <item>reserve: one repetition of error in a judged reserve [halperin2022], none in a set to failure.</item>
/// </list>
/// </remarks>
internal static class OneRepMaxError
{
    private const double ScatterPounds = 14.1;
    private const double MeanMaximumPounds = 310.0;
    private const double MeanRepetitions = 12.3;
    private const double ReserveErrorRepetitions = 1;

    public static Mass Of(Mass value, Mass load, double effective, double reserve, FormulaSpread spread)
    {
        var scatter = value.Kilograms * ScatterPounds / MeanMaximumPounds * Math.Sqrt((effective - 1) / (MeanRepetitions - 1));
        var reserved = reserve > 0 ? ReserveErrorRepetitions * KilogramsPerRepetition(load, effective) : 0;
        var disagreement = spread.StandardDeviation.Kilograms;
        return Mass.FromKilograms(Math.Sqrt(scatter * scatter + disagreement * disagreement + reserved * reserved));
    }

    // A step back of at most one repetition stays at one or more, where the default equation always has a value.
    private static double KilogramsPerRepetition(Mass load, double effective)
    {
        var formula = OneRepMaxFormulas.DefaultFor(effective);
        var step = Math.Min(1, effective - 1);
        return (formula.Estimate(load, effective) - formula.Estimate(load, effective - step)).Kilograms / step;
    }
}

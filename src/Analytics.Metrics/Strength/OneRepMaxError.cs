using Analytics.Metrics.Catalogue;
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
/// Of these the disagreement is shared by everybody and the scatter is personal; both return each day. Made anew are the reserve and, in
/// a set to failure, the count: a whole number leaves up to one repetition open, evenly spread, so 1/√12 of a repetition. The count is part
/// of the scatter, since the equations were tried on whole repetitions.
/// </remarks>
internal static class OneRepMaxError
{
    private const double ScatterPounds = 14.1;
    private const double MeanMaximumPounds = 310.0;
    private const double MeanRepetitions = 12.3;
    private const double ReserveErrorRepetitions = 1;
    private static readonly double CountErrorRepetitions = 1 / Math.Sqrt(12);

    public static EquationError Of(Mass value, Mass load, double effective, double reserve, FormulaSpread spread, string equation)
    {
        var scatter = value.Kilograms * ScatterPounds / MeanMaximumPounds * Math.Sqrt((effective - 1) / (MeanRepetitions - 1));
        var repetition = KilogramsPerRepetition(load, effective);
        var disagreement = spread.StandardDeviation.Kilograms;
        if (reserve > 0) return new(equation, scatter, disagreement, ReserveErrorRepetitions * repetition, effective);
        var counting = Math.Min(repetition * CountErrorRepetitions, scatter);
        return new(equation, Math.Sqrt(scatter * scatter - counting * counting), disagreement, counting, effective);
    }

    // A step back of at most one repetition stays at one or more, where the default equation always has a value.
    private static double KilogramsPerRepetition(Mass load, double effective)
    {
        var formula = OneRepMaxFormulas.DefaultFor(effective);
        var step = Math.Min(1, effective - 1);
        return (formula.Estimate(load, effective) - formula.Estimate(load, effective - step)).Kilograms / step;
    }
}

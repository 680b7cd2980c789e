using System.Globalization;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Strength;

/// <summary>A 1RM from a set: measured where it was lifted once to failure, else estimated with its doubt.</summary>
/// <remarks>See docs/methods/strength.md for the choices and their sources.</remarks>
public static class OneRepMax
{
    /// <summary>Effective repetitions beyond which an estimate is doubtful.</summary>
    public const double DoubtfulAbove = 10;

    /// <summary>Effective repetitions beyond which an estimate of a clean is doubtful (common practice, no source).</summary>
    public const double DoubtfulAboveForClean = 3;

    /// <summary>Judged reserve beyond which an estimate is doubtful (common practice, no source).</summary>
    public const double DoubtfulReserveAbove = 3;

    /// <summary>The default is one curve without a step, so its two branches count as one equation.</summary>
    private const string DefaultName = "Brzycki, beyond 10 repetitions Epley";

    private const double MultiplierFor95 = 1.959964;

    /// <summary>The 1RM that a set speaks for.</summary>
    /// <param name="set">Load above 0, repetitions from 1, reserve from 0 to 10 (none noted means to failure).</param>
    /// <param name="formula">Equation for an estimate; <see cref="OneRepMaxFormulas.DefaultFor"/> when null. Not used for a measured 1RM.</param>
    /// <exception cref="ArgumentOutOfRangeException">Load, repetitions or reserve out of range, or outside what <paramref name="formula"/> is defined for.</exception>
    /// <exception cref="ArgumentException"><paramref name="formula"/> is made for another lift.</exception>
    public static OneRepMaxResult Estimate(LiftSet set, OneRepMaxFormula? formula = null)
    {
        ArgumentNullException.ThrowIfNull(set);
        var reserve = Checked(set);
        var effective = set.Repetitions + reserve;
        return effective > 1
            ? Estimated(set, formula ?? OneRepMaxFormulas.DefaultFor(effective), reserve, effective, formula?.Name ?? DefaultName)
            : Measured(set);
    }

    private static OneRepMaxResult Measured(LiftSet set) => new()
    {
        Value = set.Load,
        IsMeasured = true,
        StandardError = null,
        Interval = null,
        Method = "measured, one repetition",
        Formula = null,
        Spread = null,
        EffectiveRepetitions = 1,
        Load = set.Load,
        Doubt = null,
    };

    private static OneRepMaxResult Estimated(LiftSet set, OneRepMaxFormula formula, double reserve, double effective, string formulaName)
    {
        if (formula.OnlyLift is { } only && only != set.Lift)
            throw new ArgumentException($"{formula.Name} is made for {only}; the set is {set.Lift}. Choose one of OneRepMaxFormulas.General.", nameof(formula));

        var value = formula.Estimate(set.Load, effective);
        var spread = FormulaSpread.Of(set.Lift, set.Load, effective);
        var parts = OneRepMaxError.Of(value, set.Load, effective, reserve, spread, formulaName);
        var error = Mass.FromKilograms(Math.Sqrt(parts.Variance));
        var half = MultiplierFor95 * error.Kilograms;
        return new()
        {
            Value = value,
            IsMeasured = false,
            StandardError = error,
            ErrorParts = parts,
            // Whoever lifted a load more than once has a 1RM of at least that load.
            Interval = new Interval(Math.Max(set.Load.Kilograms, value.Kilograms - half), value.Kilograms + half),
            Method = MethodText(formula, set.Repetitions, reserve),
            Formula = formula,
            Spread = spread,
            EffectiveRepetitions = effective,
            Load = set.Load,
            Doubt = DoubtText(set.Lift, formula, effective, reserve),
        };
    }

    private static double Checked(LiftSet set)
    {
        if (set.Load <= Mass.Zero)
            throw new ArgumentOutOfRangeException(nameof(set), set.Load, $"The load must be above 0 kg; got {set.Load}.");
        if (set.Repetitions < 1)
            throw new ArgumentOutOfRangeException(nameof(set), set.Repetitions, string.Create(CultureInfo.InvariantCulture, $"Repetitions must be 1 or more; got {set.Repetitions}."));
        var reserve = set.RepetitionsInReserve ?? 0;
        return reserve is >= 0 and <= 10 ? reserve
            : throw new ArgumentOutOfRangeException(nameof(set), reserve, string.Create(CultureInfo.InvariantCulture, $"Repetitions in reserve must be 0 to 10; got {reserve}."));
    }

    private static string MethodText(OneRepMaxFormula formula, int repetitions, double reserve)
    {
        var noun = repetitions == 1 ? "repetition" : "repetitions";
        var kept = reserve > 0 ? string.Create(CultureInfo.InvariantCulture, $" and {reserve:0.##} in reserve") : "";
        return string.Create(CultureInfo.InvariantCulture, $"estimated with {formula.Name} from {repetitions} {noun}{kept}");
    }

    private static string? DoubtText(string lift, OneRepMaxFormula formula, double effective, double reserve)
    {
        var limit = lift == Lifts.PowerClean ? DoubtfulAboveForClean : DoubtfulAbove;
        List<string> doubts = [];
        if (effective > limit) doubts.Add(string.Create(CultureInfo.InvariantCulture, $"estimated from {effective:0.##} repetitions, more than {limit:0}"));
        if (reserve > DoubtfulReserveAbove) doubts.Add(string.Create(CultureInfo.InvariantCulture, $"judged {reserve:0.##} repetitions from failure"));
        if (effective <= limit && !formula.ValidRange.Contains(effective)) doubts.Add($"outside the range of {formula.Name}");
        return doubts.Count == 0 ? null : string.Join("; ", doubts);
    }
}

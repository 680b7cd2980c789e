namespace Analytics.Metrics.Strength;

/// <summary>The published equations for any lift, load and number of repetitions.</summary>
/// <remarks>
/// Coefficients keep the form their source prints. Known wrong copies are listed in docs/methods/strength.md and kept
/// out by tests: a "Landers" with 1.0644 − 0.0644 r, a positive exponent in Mayhew or Wathen, lift-specific variants.
/// </remarks>
public static class GeneralFormulas
{
    private static readonly RepetitionRange UpTo10 = new(1, 10);
    private static readonly RepetitionRange UpTo15 = new(1, 15);

    /// <summary>Epley 1985, with r/30; the spelling 0.0333 r differs by at most 0.04 % up to 15 repetitions.</summary>
    public static OneRepMaxFormula Epley { get; } = new()
    {
        Name = "Epley",
        Expression = "w (1 + r/30)",
        SourceKey = "epley1985",
        Population = "strength coaching, football and powerlifting",
        ValidRange = UpTo10,
        Evidence = "widely printed, as r/30 and as 0.0333 r; gives 103.3 % of the load at one repetition",
        Equation = (w, r) => w * (1 + r / 30),
    };

    /// <summary>Brzycki 1993, exactly 36/(37 − r); the printed 1.0278 − 0.0278 r is its rounding.</summary>
    public static OneRepMaxFormula Brzycki { get; } = new()
    {
        Name = "Brzycki",
        Expression = "36 w / (37 − r)",
        SourceKey = "brzycki1993",
        Population = "strength coaching",
        ValidRange = UpTo10,
        Evidence = "widely printed, as 36/(37 − r) and as 1/(1.0278 − 0.0278 r); most accurate of its family up to 10 repetitions in Mayhew 1995, far too high beyond",
        BreaksDownAt = 37,
        Equation = (w, r) => 36 * w / (37 - r),
    };

    /// <summary>Lander 1985; the same coefficients also circulate as "McGlothin".</summary>
    public static OneRepMaxFormula Lander { get; } = new()
    {
        Name = "Lander",
        Expression = "100 w / (101.3 − 2.67123 r)",
        SourceKey = "lander1985",
        Population = "strength coaching",
        ValidRange = new(2, 10),
        Evidence = "printed in reviews; the same coefficients also circulate under another name",
        BreaksDownAt = 101.3 / 2.67123,
        Equation = (w, r) => 100 * w / (101.3 - 2.67123 * r),
    };

    /// <summary>Lombardi 1989: a power of the repetitions.</summary>
    public static OneRepMaxFormula Lombardi { get; } = new()
    {
        Name = "Lombardi",
        Expression = "w r^0.10",
        SourceKey = "lombardi1989",
        Population = "general weight training",
        ValidRange = UpTo10,
        Evidence = "printed in reviews",
        Equation = (w, r) => w * Math.Pow(r, 0.10),
    };

    /// <summary>Mayhew et al. 1992: bench press, 55–95 % of 1RM, repetitions done in one minute.</summary>
    public static OneRepMaxFormula Mayhew { get; } = new()
    {
        Name = "Mayhew et al.",
        Expression = "100 w / (52.2 + 41.9 e^(−0.055 r))",
        SourceKey = "mayhew1992",
        Population = "college men and women, bench press, repetitions in one minute at 55–95 % of 1RM",
        ValidRange = UpTo15,
        Evidence = "printed in reviews; gives 108.9 % of the load at one repetition",
        Equation = (w, r) => 100 * w / (52.2 + 41.9 * Math.Exp(-0.055 * r)),
    };

    /// <summary>O'Conner, Simmons and O'Shea 1989: 2.5 % a repetition.</summary>
    public static OneRepMaxFormula OConner { get; } = new()
    {
        Name = "O'Conner et al.",
        Expression = "w (1 + 0.025 r)",
        SourceKey = "oconner1989",
        Population = "general weight training",
        ValidRange = UpTo10,
        Evidence = "printed in reviews",
        Equation = (w, r) => w * (1 + 0.025 * r),
    };

    /// <summary>Wathen 1994 (also spelled Wathan: same author, same equation).</summary>
    public static OneRepMaxFormula Wathen { get; } = new()
    {
        Name = "Wathen",
        Expression = "100 w / (48.8 + 53.8 e^(−0.075 r))",
        SourceKey = "wathen1994",
        Population = "strength coaching, several lifts",
        ValidRange = UpTo15,
        Evidence = "widely printed, the author also spelled Wathan",
        Equation = (w, r) => 100 * w / (48.8 + 53.8 * Math.Exp(-0.075 * r)),
    };

    /// <summary>Adams 1998: 2 % of the 1RM a repetition.</summary>
    public static OneRepMaxFormula Adams { get; } = new()
    {
        Name = "Adams",
        Expression = "w / (1 − 0.02 r)",
        SourceKey = "adams1998",
        Population = "exercise laboratory teaching",
        ValidRange = UpTo10,
        Evidence = "equation from memory, not seen in print",
        BreaksDownAt = 50,
        Equation = (w, r) => w / (1 - 0.02 * r),
    };
}

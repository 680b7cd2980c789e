using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>The published equations for a 1RM from repetitions to failure.</summary>
/// <remarks>
/// Coefficients keep the form their source prints. Known wrong copies are listed in docs/methods/strength.md and kept
/// out by tests: a "Landers" with 1.0644 − 0.0644 r, a positive exponent in Mayhew or Wathen, lift-specific variants.
/// </remarks>
public static class OneRepMaxFormulas
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

    /// <summary>Reynolds, Gordon and Robergs 2006: free bench press, from a five-repetition maximum only.</summary>
    public static OneRepMaxFormula ReynoldsBench { get; } = new()
    {
        Name = "Reynolds et al. bench press 5RM",
        Expression = "1.1307 w + 0.6999 kg, w the 5RM in kg",
        SourceKey = "reynolds2006",
        Population = "34 men and 36 women, 18–69 years",
        ValidRange = new(5, 5),
        Evidence = "printed, R² 0.993, standard error of estimate 2.98 kg",
        OnlyLift = Lifts.BenchPress,
        RangeIsStrict = true,
        Equation = (w, _) => 1.1307 * w + 0.6999,
    };

    /// <summary>Reynolds, Gordon and Robergs 2006: plate-loaded leg press, from a five-repetition maximum only.</summary>
    public static OneRepMaxFormula ReynoldsLegPress { get; } = new()
    {
        Name = "Reynolds et al. leg press 5RM",
        Expression = "1.0970 w + 14.2546 kg, w the 5RM in kg",
        SourceKey = "reynolds2006",
        Population = "34 men and 36 women, 18–69 years",
        ValidRange = new(5, 5),
        Evidence = "printed, R² 0.974, standard error of estimate 16.16 kg",
        OnlyLift = Lifts.LegPress,
        RangeIsStrict = true,
        Equation = (w, _) => 1.0970 * w + 14.2546,
    };

    /// <summary>Mayhew et al. 1999: bench press repetitions with 225 lb, college football.</summary>
    public static OneRepMaxFormula FootballBench225 { get; } = new()
    {
        Name = "Mayhew et al. 225 lb",
        Expression = "226.7 lb + 7.1 lb r, w = 225 lb",
        SourceKey = "mayhew1999",
        Population = "142 college football players",
        ValidRange = new(1, 30),
        Evidence = "coefficients from memory; r 0.96, standard error of estimate 14.1 lb (from memory)",
        OnlyLift = Lifts.BenchPress,
        OnlyLoad = Mass.FromPounds(225),
        Equation = (_, r) => Mass.FromPounds(226.7 + 7.1 * r).Kilograms,
    };

    /// <summary>The equations for any lift, load and number of repetitions.</summary>
    public static IReadOnlyList<OneRepMaxFormula> General { get; } = [Epley, Brzycki, Lander, Lombardi, Mayhew, OConner, Wathen, Adams];

    /// <summary>Every equation, the general ones first.</summary>
    public static IReadOnlyList<OneRepMaxFormula> All { get; } = [.. General, ReynoldsBench, ReynoldsLegPress, FootballBench225];

    /// <summary>The equation used when none is chosen: <see cref="Wathen"/>; docs/methods/strength.md says why.</summary>
    public static OneRepMaxFormula Default => Wathen;
}

namespace Analytics.Metrics.Jumping;

/// <summary>
/// The published family of jump-power formulas.
/// </summary>
/// <remarks>
/// h is jump height in cm, m body mass in kg, s stature in cm. Copies with other signs are in circulation; the signs here reproduce
/// the group means printed by [canavan2004] (see the tests). A Lewis formula with the mass inside the root is a copying error too.
/// </remarks>
public static class JumpPowerFormulas
{
    /// <summary>Lewis: mean power of gravity on the falling body, the nomogram of the textbooks. √4.9 is √(g/2) with g = 9.8; 9.81 turns kg·m/s into W.</summary>
    public static JumpPowerFormula Lewis { get; } = new()
    {
        Name = "Lewis",
        Kind = JumpPowerKind.Fall,
        Expression = "√4.9 · m · √(h/100) · 9.81",
        Population = "none: physics of a falling body",
        Fit = "no regression; takes the mean power of the fall for that of the jump",
        SourceKey = "fox1974",
        Watts = (h, m, _) => KilogramMetresPerSecond(h, m) * 9.81,
    };

    /// <summary>Harman and others, peak. The constant is minus 1822; plus 1822 is a copying error.</summary>
    public static JumpPowerFormula HarmanPeak { get; } = new()
    {
        Name = "Harman peak",
        Kind = JumpPowerKind.Peak,
        Expression = "61.9·h + 36.0·m − 1822",
        Population = "17 men, squat jump without arms",
        Fit = "not known",
        SourceKey = "harman1991",
        Watts = (h, m, _) => 61.9 * h + 36.0 * m - 1822,
    };

    /// <summary>Harman and others, mean.</summary>
    public static JumpPowerFormula HarmanMean { get; } = new()
    {
        Name = "Harman mean",
        Kind = JumpPowerKind.Mean,
        Expression = "21.2·h + 23.0·m − 1393",
        Population = "17 men, squat jump without arms",
        Fit = "not known",
        SourceKey = "harman1991",
        Watts = (h, m, _) => 21.2 * h + 23.0 * m - 1393,
    };

    /// <summary>Sayers and others, squat jump; the one its authors recommend in general.</summary>
    public static JumpPowerFormula SayersSquat { get; } = new()
    {
        Name = "Sayers squat jump",
        Kind = JumpPowerKind.Peak,
        Expression = "60.7·h + 45.3·m − 2055",
        Population = "108 men and women, athletes and others",
        Fit = "SEE about 355 to 373 W (from memory)",
        SourceKey = "sayers1999",
        Watts = (h, m, _) => 60.7 * h + 45.3 * m - 2055,
    };

    /// <summary>Sayers and others, countermovement jump.</summary>
    public static JumpPowerFormula SayersCountermovement { get; } = new()
    {
        Name = "Sayers countermovement jump",
        Kind = JumpPowerKind.Peak,
        Expression = "51.9·h + 48.9·m − 2007",
        Population = "108 men and women, athletes and others",
        Fit = "SEE about 561 W (from memory)",
        SourceKey = "sayers1999",
        Watts = (h, m, _) => 51.9 * h + 48.9 * m - 2007,
    };

    /// <summary>Johnson and Bahamonde, peak, coefficients as in the abstract.</summary>
    public static JumpPowerFormula JohnsonBahamondePeak { get; } = new()
    {
        Name = "Johnson–Bahamonde peak",
        Kind = JumpPowerKind.Peak,
        Expression = "78.5·h + 60.6·m − 15.3·s − 1308",
        Population = "118 college athletes, men and women",
        Fit = "R² 0.91 (from memory)",
        NeedsStature = true,
        SourceKey = "johnson1996",
        Watts = (h, m, s) => 78.5 * h + 60.6 * m - 15.3 * s - 1308,
    };

    /// <summary>Johnson and Bahamonde, mean, coefficients as in the abstract.</summary>
    public static JumpPowerFormula JohnsonBahamondeMean { get; } = new()
    {
        Name = "Johnson–Bahamonde mean",
        Kind = JumpPowerKind.Mean,
        Expression = "41.4·h + 31.2·m − 13.9·s + 431",
        Population = "118 college athletes, men and women",
        Fit = "R² 0.82 (from memory)",
        NeedsStature = true,
        SourceKey = "johnson1996",
        Watts = (h, m, s) => 41.4 * h + 31.2 * m - 13.9 * s + 431,
    };

    /// <summary>Canavan and Vescovi.</summary>
    public static JumpPowerFormula CanavanVescovi { get; } = new()
    {
        Name = "Canavan–Vescovi",
        Kind = JumpPowerKind.Peak,
        Expression = "65.1·h + 25.8·m − 1413.1",
        Population = "20 college women, mean 65.9 kg",
        Fit = "R² 0.92, SEE 120.8 W",
        StandardErrorWatts = 120.8,
        SourceKey = "canavan2004",
        Watts = (h, m, _) => 65.1 * h + 25.8 * m - 1413.1,
    };

    /// <summary>Amonette and others: the largest sample and the only printed error for young men, so <see cref="Default"/>.</summary>
    public static JumpPowerFormula Amonette { get; } = new()
    {
        Name = "Amonette",
        Kind = JumpPowerKind.Peak,
        Expression = "63.6·h + 42.7·m − 1846.5",
        Population = "415 males of 12 to 24 years; checked on 45 more",
        Fit = "r 0.96, SEE 250.7 W; check sample measured 3244 ± 991 W, predicted 3253 ± 1037 W",
        StandardErrorWatts = 250.7,
        SourceKey = "amonette2012",
        Watts = (h, m, _) => 63.6 * h + 42.7 * m - 1846.5,
    };

    /// <summary>Lara and others.</summary>
    public static JumpPowerFormula Lara { get; } = new()
    {
        Name = "Lara",
        Kind = JumpPowerKind.Peak,
        Expression = "62.5·h + 50.3·m − 2184.7",
        Population = "male applicants to a sports faculty",
        Fit = "SEE about 246 W; equation and error from memory",
        SourceKey = "lara2006",
        Watts = (h, m, _) => 62.5 * h + 50.3 * m - 2184.7,
    };

    /// <summary>The formula behind the <c>cmj_peak_power</c> metric.</summary>
    public static JumpPowerFormula Default => Amonette;

    /// <summary>The family, one entry a published formula.</summary>
    public static IReadOnlyList<JumpPowerFormula> All { get; } =
    [
        Lewis, HarmanPeak, HarmanMean, SayersSquat, SayersCountermovement,
        JohnsonBahamondePeak, JohnsonBahamondeMean, CanavanVescovi, Amonette, Lara,
    ];

    /// <summary>
    /// Second-hand copies of Johnson–Bahamonde with other coefficients, kept so that a figure from such a copy can be recognised.
    /// Not in <see cref="All"/>: prefer the form of the abstract.
    /// </summary>
    public static IReadOnlyList<JumpPowerFormula> Variants { get; } =
    [
        JohnsonBahamondePeak with
        {
            Name = "Johnson–Bahamonde peak (second-hand form)",
            Expression = "78.6·h + 60.3·m − 15.3·s − 1308",
            Fit = "coefficients from secondary copies",
            Watts = (h, m, s) => 78.6 * h + 60.3 * m - 15.3 * s - 1308,
        },
        JohnsonBahamondeMean with
        {
            Name = "Johnson–Bahamonde mean (second-hand form)",
            Expression = "43.8·h + 32.7·m − 16.8·s + 431",
            Fit = "coefficients from secondary copies",
            Watts = (h, m, s) => 43.8 * h + 32.7 * m - 16.8 * s + 431,
        },
    ];

    /// <summary>Lewis in the unit of the textbook nomogram.</summary>
    /// <param name="heightCentimetres">Jump height in cm, 0 or more.</param>
    /// <param name="bodyMassKilograms">Body mass in kg.</param>
    /// <returns>Power in kg·m/s (kilogram-force metres a second); times 9.81 for W.</returns>
    public static double KilogramMetresPerSecond(double heightCentimetres, double bodyMassKilograms)
        => Math.Sqrt(4.9) * bodyMassKilograms * Math.Sqrt(heightCentimetres / 100);
}

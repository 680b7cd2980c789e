using System.Globalization;

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
        Watts = (h, m, _) => LewisKilogramMetresPerSecond(h, m) * 9.81,
    };

    /// <summary>Harman and others, peak. The constant is minus 1822; plus 1822 is a copying error.</summary>
    public static JumpPowerFormula HarmanPeak { get; } = Linear("Harman peak", JumpPowerKind.Peak, 61.9, 36.0, 0, -1822,
        "17 men", "not known", "harman1991");

    /// <summary>Harman and others, mean.</summary>
    public static JumpPowerFormula HarmanMean { get; } = Linear("Harman mean", JumpPowerKind.Mean, 21.2, 23.0, 0, -1393,
        "17 men", "not known", "harman1991");

    /// <summary>Sayers and others, squat jump; the one its authors recommend in general.</summary>
    public static JumpPowerFormula SayersSquat { get; } = Linear("Sayers squat jump", JumpPowerKind.Peak, 60.7, 45.3, 0, -2055,
        "108 men and women", "SEE about 355 to 373 W (from memory)", "sayers1999");

    /// <summary>Sayers and others, countermovement jump.</summary>
    public static JumpPowerFormula SayersCountermovement { get; } = Linear("Sayers countermovement jump", JumpPowerKind.Peak, 51.9, 48.9, 0, -2007,
        "108 men and women", "SEE about 561 W (from memory)", "sayers1999");

    /// <summary>Johnson and Bahamonde, peak, coefficients as in the abstract.</summary>
    public static JumpPowerFormula JohnsonBahamondePeak { get; } = Linear("Johnson–Bahamonde peak", JumpPowerKind.Peak, 78.5, 60.6, -15.3, -1308,
        "118 college athletes, men and women", "R² 0.91 (from memory)", "johnson1996");

    /// <summary>Johnson and Bahamonde, mean, coefficients as in the abstract.</summary>
    public static JumpPowerFormula JohnsonBahamondeMean { get; } = Linear("Johnson–Bahamonde mean", JumpPowerKind.Mean, 41.4, 31.2, -13.9, 431,
        "118 college athletes, men and women", "R² 0.82 (from memory)", "johnson1996");

    /// <summary>Canavan and Vescovi.</summary>
    public static JumpPowerFormula CanavanVescovi { get; } = Linear("Canavan–Vescovi", JumpPowerKind.Peak, 65.1, 25.8, 0, -1413.1,
        "20 college women, mean 65.9 kg", "R² 0.92, SEE 120.8 W", "canavan2004") with
    {
        StandardErrorWatts = 120.8,
    };

    /// <summary>Amonette and others: the largest sample and the only printed error for young men, so <see cref="Default"/>.</summary>
    public static JumpPowerFormula Amonette { get; } = Linear("Amonette", JumpPowerKind.Peak, 63.6, 42.7, 0, -1846.5,
        "415 males of 12 to 24 years; checked on 45 more", "r 0.96, SEE 250.7 W; check sample measured 3244 ± 991 W, predicted 3253 ± 1037 W", "amonette2012") with
    {
        StandardErrorWatts = 250.7,
    };

    /// <summary>Lara and others.</summary>
    public static JumpPowerFormula Lara { get; } = Linear("Lara", JumpPowerKind.Peak, 62.5, 50.3, 0, -2184.7,
        "male applicants to a sports faculty", "SEE about 246 W; equation and error from memory", "lara2006");

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
        Linear("Johnson–Bahamonde peak (second-hand form)", JumpPowerKind.Peak, 78.6, 60.3, -15.3, -1308,
            "118 college athletes, men and women", "coefficients from secondary copies", "johnson1996"),
        Linear("Johnson–Bahamonde mean (second-hand form)", JumpPowerKind.Mean, 43.8, 32.7, -16.8, 431,
            "118 college athletes, men and women", "coefficients from secondary copies", "johnson1996"),
    ];

    /// <summary>Lewis in the unit of the textbook nomogram.</summary>
    /// <param name="heightCentimetres">Jump height in cm, 0 or more.</param>
    /// <param name="bodyMassKilograms">Body mass in kg.</param>
    /// <returns>Power in kg·m/s (kilogram-force metres a second); times 9.81 for W.</returns>
    public static double LewisKilogramMetresPerSecond(double heightCentimetres, double bodyMassKilograms)
        => Math.Sqrt(4.9) * bodyMassKilograms * Math.Sqrt(heightCentimetres / 100);

    // Text and arithmetic come from the same four numbers, so the page cannot state another formula than the one worked out.
    private static JumpPowerFormula Linear(
        string name, JumpPowerKind kind, double perCentimetre, double perKilogram, double perStatureCentimetre, double constant,
        string population, string fit, string sourceKey) => new()
        {
            Name = name,
            Kind = kind,
            Expression = $"{Signed(perCentimetre, "0.0", "·h")}{Signed(perKilogram, "0.0", "·m")}{Signed(perStatureCentimetre, "0.0", "·s")}{Signed(constant, "0.#", "")}"[3..],
            Population = population,
            Fit = fit,
            NeedsStature = perStatureCentimetre != 0,
            SourceKey = sourceKey,
            Watts = (h, m, s) => perCentimetre * h + perKilogram * m + (perStatureCentimetre == 0 ? 0 : perStatureCentimetre * s) + constant,
        };

    private static string Signed(double value, string format, string symbol)
        => value == 0 ? "" : (value < 0 ? " − " : " + ") + Math.Abs(value).ToString(format, CultureInfo.InvariantCulture) + symbol;
}

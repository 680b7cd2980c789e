namespace Analytics.Metrics.Strength;

/// <summary>The whole family of published equations for a 1RM from repetitions to failure, and which one is the default.</summary>
public static class OneRepMaxFormulas
{
    /// <summary>Repetitions at which Brzycki and Epley are exactly equal, and where the default changes from one to the other.</summary>
    public const double DefaultChangesAt = 10;

    /// <summary>The equations for any lift, load and number of repetitions.</summary>
    public static IReadOnlyList<OneRepMaxFormula> General { get; } =
    [
        GeneralFormulas.Epley, GeneralFormulas.Brzycki, GeneralFormulas.Lander, GeneralFormulas.Lombardi,
        GeneralFormulas.Mayhew, GeneralFormulas.OConner, GeneralFormulas.Wathen, GeneralFormulas.Adams,
    ];

    /// <summary>Every equation that needs only a set, the general ones first.</summary>
    public static IReadOnlyList<OneRepMaxFormula> All { get; } =
        [.. General, FiveRepMaxFormulas.BenchPress, FiveRepMaxFormulas.LegPress, FootballBenchFormulas.Mayhew];

    /// <summary>The equation used when none is chosen: Brzycki up to 10 repetitions, Epley beyond.</summary>
    /// <remarks>
    /// Brzycki was the most accurate of its family up to 10 repetitions in 220 players [mayhew1995] and gives back the
    /// load at one repetition; beyond 10 it runs away (345.8 lb against 310.0 lb measured, where Epley gave 316.3 lb).
    /// The two are equal at 10, so the change makes no step.
    /// </remarks>
    /// <param name="repetitions">Effective repetitions.</param>
    public static OneRepMaxFormula DefaultFor(double repetitions)
        => repetitions <= DefaultChangesAt ? GeneralFormulas.Brzycki : GeneralFormulas.Epley;
}

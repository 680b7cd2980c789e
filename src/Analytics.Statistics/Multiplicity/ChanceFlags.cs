using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Multiplicity;

/// <summary>How many flags a report would show if nobody had changed: every look has its false-flag rate, and many looks add up.</summary>
/// <remarks>
/// The expected number holds whatever hangs together. Range and chance of at least one take the looks as independent: measures of one player, and all
/// looks that share one typical error, move together, which leaves the average and widens the range.
/// </remarks>
/// <param name="Looks">Number of comparisons.</param>
/// <param name="Rate">False-flag rate of one.</param>
/// <param name="Expected">Expected number of false flags, looks times rate.</param>
/// <param name="Low">Least of the central range.</param>
/// <param name="High">Most of the central range.</param>
/// <param name="Level">Probability that the number falls in the range, at least.</param>
public sealed record ChanceFlags(int Looks, double Rate, double Expected, int Low, int High, double Level) : Result
{
    /// <summary>What was looked at, in words: "60 players × 12 measures".</summary>
    public string Scope { get; private init; } = FormattableString.Invariant($"{Looks} {(Looks == 1 ? "comparison" : "comparisons")}");

    /// <summary>Chance of at least one false flag, 1 − (1 − rate)ᴺ.</summary>
    public double AtLeastOne => 1 - Math.Pow(1 - Rate, Looks);

    /// <summary>Of any number of comparisons.</summary>
    /// <param name="looks">Number of comparisons, 0 or more.</param>
    /// <param name="rate">False-flag rate of one, 0 to 1.</param>
    /// <param name="level">Probability inside the range, above 0 and below 1.</param>
    public static ChanceFlags Of(int looks, double rate, double level = 0.95)
    {
        Require.AtLeast(looks, 0, nameof(looks));
        Require.Share(level, nameof(level));
        Require.Within(rate, 0, 1, nameof(rate));
        return new(
            looks, rate, looks * rate,
            BinomialLaw.Quantile((1 - level) / 2, looks, rate), BinomialLaw.Quantile((1 + level) / 2, looks, rate), level);
    }

    /// <summary>Of a squad report over several measures.</summary>
    /// <param name="players">Players, 0 or more.</param>
    /// <param name="measures">Measures, 0 or more.</param>
    /// <param name="rate">False-flag rate of one comparison, 0 to 1.</param>
    /// <param name="looks">Comparisons made, at most players times measures; null when every player was judged in every measure.</param>
    /// <param name="level">Probability inside the range, above 0 and below 1.</param>
    public static ChanceFlags OfSquad(int players, int measures, double rate, int? looks = null, double level = 0.95)
    {
        var all = (long)Require.AtLeast(players, 0, nameof(players)) * Require.AtLeast(measures, 0, nameof(measures));
        if (all > int.MaxValue)
            throw new ArgumentException(FormattableString.Invariant($"{players} players × {measures} measures are {all} comparisons; at most {int.MaxValue} are allowed."), nameof(measures));
        var possible = (int)all;
        var made = looks ?? possible;
        Require.Within(made, 0, possible, nameof(looks));
        var scope = FormattableString.Invariant($"{players} {(players == 1 ? "player" : "players")} × {measures} {(measures == 1 ? "measure" : "measures")}");
        return Of(made, rate, level) with { Scope = made == possible ? scope : FormattableString.Invariant($"{scope}, {possible - made} not done") };
    }

    /// <summary>Whether so many flags are more than the range of chance holds.</summary>
    /// <param name="flags">Flags seen, 0 or more.</param>
    public bool IsExceededBy(int flags) => Require.AtLeast(flags, 0, nameof(flags)) > High;

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Flags by chance alone", "binomial law of independent comparisons",
        [
            new("expected false flags", Expected) { Interval = new(Low, High, Level) },
            new("chance of at least one", 100 * AtLeastOne, "%"),
        ])
    {
        Basis = FormattableString.Invariant($"{Scope}; each comparison is wrong about an unchanged player at most {100 * Rate:0.##} % of the time"),
        Remarks = ["Measures of one player and a shared typical error move together: the average stays, the range is wider than stated."],
    };
}

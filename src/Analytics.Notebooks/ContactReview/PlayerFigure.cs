using Analytics.Statistics;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Reliability;

namespace Analytics.Notebooks.ContactReview;

/// <summary>
/// A player's mean over his repetitions with its doubt. What repetitions vary beyond the error of reading them is pooled over the squad, since one player has too few:
/// Var = (s² − ē)₊/n + ē (or ē/n where errors of reading are independent from clip to clip), with s the SD within players and ē the mean squared error of a reading. Only s² is estimated, so by Satterthwaite
/// the degrees of freedom are those of s² times (Var/(s²/n))².
/// </summary>
/// <param name="Value">The mean.</param>
/// <param name="StandardError">Its standard error; null when no error is known.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of the pooled SD; infinite when no player has two repetitions.</param>
/// <param name="Count">Repetitions behind it.</param>
internal sealed record PlayerFigure(double Value, double? StandardError, double DegreesOfFreedom, int Count)
{
    /// <summary>95 % interval; null when no error is known.</summary>
    public Interval? Interval => StandardError is { } se && StudentLaw.TwoSided(0.95, DegreesOfFreedom) * se is var reach ? new Interval(Value - reach, Value + reach) : null;

    /// <summary>Chance that the player's mean lies below a limit; null when no error is known.</summary>
    public double? ChanceBelow(double limit) => StandardError is > 0 and var se ? StudentLaw.Cdf((limit - Value) / se, DegreesOfFreedom) : null;

    /// <summary>The same in another unit.</summary>
    public PlayerFigure Times(double factor) => this with { Value = Value * factor, StandardError = StandardError * factor };
}

/// <summary>How far the repetitions of one player lie apart, pooled over a squad.</summary>
/// <param name="Variance">Pooled variance within players.</param>
/// <param name="DegreesOfFreedom">Repetitions less players; 0 when nobody has two.</param>
internal sealed record WithinPlayers(double Variance, int DegreesOfFreedom)
{
    /// <summary>Pools the repetitions of the players of a squad.</summary>
    public static WithinPlayers Of(IEnumerable<IReadOnlyList<Estimate>> players)
    {
        IReadOnlyList<double>[] values = [.. players.Select(p => (double[])[.. p.Select(r => r.Value)])];
        if (!values.Any(v => v.Count > 1)) return new(0, 0);
        var pooled = TypicalErrors.FromAttempts(values);
        return new(pooled.Value * pooled.Value, (int)pooled.DegreesOfFreedom);
    }

    /// <summary>The figure of one player.</summary>
    /// <param name="repetitions">His repetitions; at least one.</param>
    /// <param name="shared">Whether the error of reading is the same for all clips, as that of a scale is, and so is not averaged away.</param>
    public PlayerFigure Mean(IReadOnlyList<Estimate> repetitions, bool shared)
    {
        var n = repetitions.Count;
        double? reading = repetitions.All(r => r.StandardError is not null) ? repetitions.Average(r => r.StandardError!.Value * r.StandardError.Value) : null;
        // Without a known error of reading the spread between repetitions holds it all the same.
        var variance = reading is { } e ? (Math.Max(0, Variance - e) / n) + (shared ? e : e / n) : DegreesOfFreedom > 0 ? Variance / n : (double?)null;
        var df = DegreesOfFreedom > 0 && Variance > 0 && variance is { } whole ? DegreesOfFreedom * Math.Pow(whole / (Variance / n), 2) : double.PositiveInfinity;
        return new(repetitions.Average(r => r.Value), variance is { } v ? Math.Sqrt(v) : null, df, n);
    }
}

using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Association.Repeated;

namespace Analytics.Metrics.Transfer;

/// <summary>What the shared background alone gives: both gains predicted from the starting levels in both measures and from training years.</summary>
public sealed record SharedBackground
{
    /// <summary>What stands for training age: "training years", "year of birth in place of training years", or empty when neither is known of enough players.</summary>
    public required string Covariate { get; init; }

    /// <summary>Players with all of it.</summary>
    public required int Athletes { get; init; }

    /// <summary>Players with gains but without a starting level or training age, who are left out here.</summary>
    public required int LeftOut { get; init; }

    /// <summary>Correlation of the gains that the background alone gives; null when it cannot be told.</summary>
    public double? FromBackground { get; init; }

    /// <summary>Partial correlation: what remains of the correlation of the gains (errors not taken off); null when it cannot be told.</summary>
    public double? Remaining { get; init; }

    /// <summary>Interval of <see cref="Remaining"/>.</summary>
    public Interval? RemainingInterval { get; init; }

    /// <summary>What was and was not known, in words a report can print.</summary>
    public required string Basis { get; init; }

    internal static SharedBackground Of(
        TransferMeasure x, TransferMeasure y, GainCorrelation gains, TestingCalendar calendar, IReadOnlyDictionary<string, AthleteBackground> backgrounds, double level)
    {
        var (sx, sy) = (calendar.Starts(x.Turned), calendar.Starts(y.Turned));
        var started = gains.Gains.Where(g => sx.ContainsKey(g.Athlete) && sy.ContainsKey(g.Athlete)).ToList();
        var (covariate, value) = Age(started, backgrounds);
        var used = value is null ? started : [.. started.Where(g => value(g.Athlete).HasValue)];
        var basis = "starting level in both" + (covariate.Length > 0 ? " and " + covariate : "; neither training years nor year of birth is known of enough players, so training age is left out");
        var made = new SharedBackground { Covariate = covariate, Athletes = used.Count, LeftOut = gains.Athletes - used.Count, Basis = basis };
        List<IReadOnlyList<double>> others = [[.. used.Select(g => sx[g.Athlete].Mean)], [.. used.Select(g => sy[g.Athlete].Mean)]];
        if (value is not null) others.Add([.. used.Select(g => value(g.Athlete)!.Value)]);
        // A mean and a slope for each column leave four degrees of freedom or more (our choice).
        if (used.Count < others.Count + 5) return made with { Basis = basis + "; too few players to tell" };
        double[] gx = [.. used.Select(g => g.X)], gy = [.. used.Select(g => g.Y)];
        if (gx.Distinct().Count() < 2 || gy.Distinct().Count() < 2) return made with { Basis = basis + "; gains do not differ" };
        var partial = PartialCorrelation.Of(gx, gy, others, level);
        return made with { FromBackground = partial.FromOthers, Remaining = partial.Value, RemainingInterval = partial.Interval };
    }

    // Known of at least two thirds (our choice): a covariate that would drop more players than that is not worth them.
    private static (string Words, Func<string, double?>? Value) Age(List<GainPair> players, IReadOnlyDictionary<string, AthleteBackground> backgrounds)
    {
        double? Years(string id) => backgrounds.GetValueOrDefault(id)?.TrainingYears;
        double? Birth(string id) => backgrounds.GetValueOrDefault(id)?.BirthYear;
        bool Enough(Func<string, double?> value) => 3 * players.Count(p => value(p.Athlete) is { } v && double.IsFinite(v)) >= 2 * players.Count;
        return players.Count == 0 ? ("", null) : Enough(Years) ? ("training years", Years) : Enough(Birth) ? ("year of birth in place of training years", Birth) : ("", null);
    }
}

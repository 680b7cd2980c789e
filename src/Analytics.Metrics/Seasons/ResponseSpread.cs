using System.Globalization;
using Analytics.Statistics;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>
/// How differently the athletes responded to the season beyond what test error shows [atkinsonbatterham2015; hopkins2015]. It speaks of the squad; which of them
/// responded it does not tell, and a list of names from it would be mostly noise.
/// </summary>
public sealed record ResponseSpread
{
    /// <summary>Fewest athletes for a spread worth stating (our choice).</summary>
    public const int Fewest = 6;

    /// <summary>SD of true responses with its interval, in the metric's unit; null when it cannot be told.</summary>
    public required IndividualResponses? Responses { get; init; }

    /// <summary>Mean change of the same athletes; null without athletes.</summary>
    public required MeanChange? Mean { get; init; }

    /// <summary>Share of athletes whose true change is beyond the smallest worthwhile one, if responses are normal; null when no spread was found or no such change can be stated.</summary>
    public required ResponderShares? Responders { get; init; }

    /// <summary>The least and the most the share of clear improvers may be, at the ends of the intervals of mean and SD; null when <see cref="Responders"/> is.</summary>
    public required Interval? ImproversRange { get; init; }

    /// <summary>Athletes tested over the whole season, whose changes were used.</summary>
    public required int Athletes { get; init; }

    /// <summary>What it says, in plain sentences.</summary>
    public required string Words { get; init; }

    /// <summary>Why it cannot be told; null when it was.</summary>
    public required string? Reason { get; init; }

    /// <summary>The spread of responses behind the changes of a season.</summary>
    /// <param name="change">The changes; only athletes tested over the whole season count.</param>
    public static ResponseSpread Of(SeasonChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        List<AthleteSeason> whole = [.. change.Athletes.Where(a => a.IsWholeSeason)];
        var mean = whole.Count > 0
            ? MeanChange.Of([.. whole.Select(a => a.Difference)], change.Rule.Level).WithSharedError(whole.Average(a => a.SharedError))
            : null;
        var why = whole.Count < Fewest ? $"{whole.Count} {(whole.Count == 1 ? "athlete was" : "athletes were")} tested over the whole season; {Fewest} are needed"
            : !change.Reliability.HoldsDayToDayVariation ? $"no error between days is known ({change.Reliability.Basis})"
            : whole.Exists(a => a.Change is null) ? "the error of some changes is not known"
            : null;
        if (why is not null || mean?.StandardDeviation is not { } spread)
            return new() { Responses = null, Mean = mean, Responders = null, ImproversRange = null, Athletes = whole.Count, Reason = why, Words = $"Cannot be told: {why}." };

        // What an equation gets wrong about everybody alike does not drive changes apart.
        var error = whole.Average(a => Math.Pow(a.Change!.StandardError, 2) - (a.SharedError * a.SharedError));
        var responses = IndividualResponses.BeyondError(spread, whole.Count, Math.Sqrt(error / 2), change.Reliability.DegreesOfFreedom, change.Rule.Level);
        var improving = change.Metric.Better == Catalogue.Direction.Lower ? -mean.Mean.Value : mean.Mean.Value;
        var shares = change.Worthwhile.Value is { } worthwhile ? responses.Responders(improving, worthwhile) : null;
        return new()
        {
            Responses = responses,
            Mean = mean,
            Responders = shares,
            ImproversRange = shares is null ? null : Range(improving, mean, responses, change.Worthwhile.Value!.Value),
            Athletes = whole.Count,
            Reason = null,
            Words = InWords(change, responses),
        };
    }

    private static Interval Range(double improving, MeanChange mean, IndividualResponses responses, double worthwhile)
    {
        var reach = mean.Mean.Interval is { } interval ? (interval.High - interval.Low) / 2 : 0;
        double[] shares =
        [
            .. from centre in (double[])[improving - reach, improving + reach]
               from spread in (double[])[responses.Interval.Low, responses.Interval.High]
               select spread > 0 ? ResponderShares.Of(centre, spread, worthwhile).Above : centre > worthwhile ? 1 : 0,
        ];
        return new(shares.Min(), shares.Max(), responses.Level);
    }

    private static string InWords(SeasonChange change, IndividualResponses responses)
    {
        string Figure(double value) => value.ToString("F" + change.Metric.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        var (low, high, unit) = (responses.Interval.Low, responses.Interval.High, change.Metric.Unit);
        if (responses.Interval.High <= 0) return "The changes differ less than test error explains: the error may be too large for this squad. No difference in response was found.";
        var most = $"true changes may differ by an SD of up to {Figure(high)} {unit}";
        if (responses.Variance <= 0) return $"No difference in response was found beyond test error; {most}.";
        if (low <= 0) return $"Athletes may have responded differently (SD {Figure(responses.StandardDeviation)} {unit}) or all alike: the data do not tell; {most}.";
        return $"Athletes responded differently: true changes scatter about their mean with an SD of {Figure(responses.StandardDeviation)} {unit} ({Figure(low)} to {Figure(high)}), test error taken off.";
    }
}

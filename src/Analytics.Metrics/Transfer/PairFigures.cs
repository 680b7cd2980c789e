using System.Globalization;
using Analytics.Statistics.Association;
using Analytics.Statistics.Association.Repeated;

namespace Analytics.Metrics.Transfer;

/// <summary>The figures of one pair, before the number of pairs is known.</summary>
internal static class PairFigures
{
    public static TransferPair Of(
        TransferMeasure x, TransferMeasure y, IReadOnlyList<string> shared, TestingCalendar calendar,
        IReadOnlyDictionary<string, AthleteBackground> backgrounds, TransferOptions options)
    {
        var cautions = new List<string>();
        var alike = false;
        void Note(ArgumentException reason)
        {
            alike = reason is GainsAlikeException;
            cautions.Add(reason.ParamName is { } name ? reason.Message.Replace($" (Parameter '{name}')", "", StringComparison.Ordinal) : reason.Message);
        }

        var pair = new TransferPair { WeightRoom = x, Field = y, SharedInputs = shared, Verdict = TransferVerdict.NotComputed, Sentence = "" };
        var keys = x.Means.Keys.Union(y.Means.Keys).OrderBy(k => k.Block).ThenBy(k => k.Athlete, StringComparer.Ordinal).ToList();
        var both = keys.Where(k => x.Means.ContainsKey(k) && y.Means.ContainsKey(k)).ToList();
        string[] ids = [.. both.Select(k => k.Athlete)];
        double[] times = [.. both.Select(k => calendar.TimeOf(k.Block))], a = [.. both.Select(k => x.Means[k].Value)], b = [.. both.Select(k => y.Means[k].Value)];
        if (both.Count > 2)
        {
            pair = pair with
            {
                Classic = Try(() => RepeatedMeasuresCorrelation.Of(ids, a, b, options.Level)),
                OverSeason = Try(() => WithinCorrelation.OfAthletes(ids, a, b, options.Level)),
                BeyondCalendar = Try(() => WithinCorrelation.BeyondCalendar(ids, times, a, b, options.Level)),
            };
        }

        var gains = keys.Count > 2
            ? Try(() => GainCorrelation.Of(
                [.. keys.Select(k => k.Athlete)], [.. keys.Select(k => calendar.TimeOf(k.Block))],
                [.. keys.Select(k => x.Means.TryGetValue(k, out var v) ? v.Value : (double?)null)], [.. keys.Select(k => y.Means.TryGetValue(k, out var v) ? v.Value : (double?)null)], options.Level,
                [.. keys.Select(k => x.Means.TryGetValue(k, out var v) ? v.Precision : 1)], [.. keys.Select(k => y.Means.TryGetValue(k, out var v) ? v.Precision : 1)]), Note)
            : null;
        if (gains is null || gains.Athletes < options.MinimumAthletes)
        {
            if (gains is not null)
                cautions.Add(string.Create(CultureInfo.InvariantCulture, $"{gains.Athletes} players were seen long enough in both; {options.MinimumAthletes} are needed."));
            return pair with { Cautions = cautions, GainsAlike = alike };
        }

        if (gains.ReliabilityX is null) cautions.Add("Too few testing days a player: what a good day gives to both tests cannot be taken off, nor can the gains be freed of error.");
        if (!x.HasDirection || !y.HasDirection) cautions.Add("For a measure without a better direction, gain means more.");
        return pair with
        {
            Gains = gains,
            Slope = ChangeSlope.Of(x, y, calendar, gains.OfErrors, options.Level),
            Errors = SharedErrors.Of(x, y, gains, calendar, options.Level),
            Background = SharedBackground.Of(x, y, gains, calendar, backgrounds, options.Level),
            Cautions = cautions,
        };
    }

    // Too few pairs or nothing that varies: the library says so in an ArgumentException, and the pair is shown without the figure.
    private static T? Try<T>(Func<T> make, Action<ArgumentException>? note = null) where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException reason)
        {
            note?.Invoke(reason);
            return null;
        }
    }
}

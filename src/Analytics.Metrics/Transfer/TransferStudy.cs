using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Multiplicity;

namespace Analytics.Metrics.Transfer;

/// <summary>
/// Did weight-room gains reach the field? Every weight-room measure beside every field measure, all of them shown in the order given, with verdicts adjusted for
/// their number. Description of what went with what; never that one made the other. The method is in docs/methods/transfer.md.
/// </summary>
/// <example>
/// <code>
/// var study = TransferStudy.Of(profile, [squat, clean], [tenYards, topSpeed], days, backgrounds);
/// foreach (var pair in study.Pairs) ...   // pair.Sentence
/// </code>
/// </example>
public sealed record TransferStudy
{
    private TransferStudy()
    {
    }

    /// <summary>Weight-room measures, in the order given.</summary>
    public required IReadOnlyList<TransferMeasure> WeightRoom { get; init; }

    /// <summary>Field measures, in the order given.</summary>
    public required IReadOnlyList<TransferMeasure> Field { get; init; }

    /// <summary>All pairs: for each weight-room measure every field measure.</summary>
    public required IReadOnlyList<TransferPair> Pairs { get; init; }

    /// <summary>Pairs with a p, for which the verdicts are adjusted.</summary>
    public required int Judged { get; init; }

    /// <summary>How many of them would stand out by chance alone if nothing went with anything and nobody adjusted.</summary>
    public required ChanceFlags ByChance { get; init; }

    /// <summary>How many do stand out before the adjustment.</summary>
    public required int StandOutAlone { get; init; }

    /// <summary>Dates of the testing days.</summary>
    public required IReadOnlyList<DateOnly> Dates { get; init; }

    /// <summary>How testing days were taken together where there are too many for an effect each, in words; empty when every day stands alone.</summary>
    public required string Blocks { get; init; }

    /// <summary>The choices made.</summary>
    public required TransferOptions Options { get; init; }

    /// <summary>The answer as a whole, in one or a few plain sentences.</summary>
    public required string Sentence { get; init; }

    /// <summary>The pair of two metrics; null when it was not asked for.</summary>
    /// <param name="weightRoom">Identifier of the weight-room metric.</param>
    /// <param name="field">Identifier of the field metric.</param>
    public TransferPair? Pair(string weightRoom, string field) => Pairs.FirstOrDefault(p => p.WeightRoom.Metric.Id == weightRoom && p.Field.Metric.Id == field);

    /// <summary>From metrics, which are read off all days first.</summary>
    /// <param name="profile">The squad, its retest days.</param>
    /// <param name="weightRoom">Weight-room metrics.</param>
    /// <param name="field">Field metrics.</param>
    /// <param name="days">Testing days, retest days among them.</param>
    /// <param name="backgrounds">Training age by athlete; may be empty.</param>
    /// <param name="options">Choices; null for the usual ones.</param>
    public static TransferStudy Of(
        SquadProfile profile, IReadOnlyList<Metric> weightRoom, IReadOnlyList<Metric> field, IReadOnlyList<IReadOnlyList<AthleteDay>> days,
        IReadOnlyDictionary<string, AthleteBackground> backgrounds, TransferOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(weightRoom);
        ArgumentNullException.ThrowIfNull(field);
        return Of(profile, [.. weightRoom.Select(m => SeasonValues.Of(m, days))], [.. field.Select(m => SeasonValues.Of(m, days))], days, backgrounds, options);
    }

    /// <summary>From metrics already read off all days.</summary>
    /// <param name="profile">The squad, its retest days.</param>
    /// <param name="weightRoom">Values of the weight-room metrics.</param>
    /// <param name="field">Values of the field metrics.</param>
    /// <param name="days">The testing days they were read from.</param>
    /// <param name="backgrounds">Training age by athlete; may be empty.</param>
    /// <param name="options">Choices; null for the usual ones.</param>
    /// <exception cref="ArgumentException">No metric on one side, or one metric on both.</exception>
    public static TransferStudy Of(
        SquadProfile profile, IReadOnlyList<SeasonValues> weightRoom, IReadOnlyList<SeasonValues> field, IReadOnlyList<IReadOnlyList<AthleteDay>> days,
        IReadOnlyDictionary<string, AthleteBackground> backgrounds, TransferOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(backgrounds);
        options ??= new();
        Check(weightRoom, field);
        var calendar = new TestingCalendar(days, profile.Retests);
        List<TransferMeasure> room = [.. weightRoom.Select(v => TransferMeasure.Of(profile, v, calendar))], fields = [.. field.Select(v => TransferMeasure.Of(profile, v, calendar))];
        var inputs = weightRoom.Concat(field).ToDictionary(v => v.Metric.Id, v => SharedInputs.Of(v.Metric, days), StringComparer.Ordinal);
        List<TransferPair> pairs = [];
        foreach (var x in room)
            foreach (var y in fields) pairs.Add(PairFigures.Of(x, y, [.. inputs[x.Metric.Id].Intersect(inputs[y.Metric.Id])], calendar, backgrounds, options));

        var judged = pairs.Where(p => p.Gains?.P is not null).ToList();
        var adjusted = judged.Count == 0 ? [] : AdjustedPValues.Of([.. judged.Select(p => p.Gains!.P!.Value)], Adjustment.Holm).Adjusted;
        var p = judged.Select((pair, i) => (pair, adjusted[i])).ToDictionary(j => (j.pair.WeightRoom.Metric.Id, j.pair.Field.Metric.Id), j => j.Item2);
        List<TransferPair> told = [.. pairs.Select(pair => Judge(pair, p.TryGetValue((pair.WeightRoom.Metric.Id, pair.Field.Metric.Id), out var own) ? own : null, judged.Count, options))];
        var chance = ChanceFlags.Of(judged.Count, 1 - options.Level, options.Level);
        return new()
        {
            WeightRoom = room,
            Field = fields,
            Pairs = told,
            Judged = judged.Count,
            ByChance = chance,
            StandOutAlone = judged.Count(j => j.Gains!.P <= 1 - options.Level),
            Dates = calendar.Dates,
            Blocks = calendar.Blocks,
            Options = options,
            Sentence = TransferWords.OfAll(told, chance.Expected, options.Level),
        };
    }

    private static TransferPair Judge(TransferPair pair, double? adjusted, int pairs, TransferOptions options)
    {
        if (pair.Gains is { } gains && adjusted is { } p)
        {
            // Bonferroni: together the intervals of all pairs hold with the level of one.
            var level = 1 - (1 - options.Level) / pairs;
            pair = pair with { AdjustedP = p, Simultaneous = gains.IntervalAt(level), SimultaneousOfTrueGains = gains.TrueIntervalAt(level) };
            pair = pair with { Verdict = Verdict(pair, gains.Value, p, options) };
        }

        return pair with { Sentence = TransferWords.Of(pair, pairs, options) };
    }

    private static TransferVerdict Verdict(TransferPair pair, double r, double adjusted, TransferOptions options)
        => adjusted <= 1 - options.Level ? r > 0 ? TransferVerdict.WentTogether : TransferVerdict.WentOpposite
            : pair.Gains!.ReliabilityX is not null && !pair.Gains.SpreadIsSeen ? TransferVerdict.NoSpreadSeen
            : pair.SimultaneousOfTrueGains is { } i && i.High < options.StrongLink ? TransferVerdict.AgainstStrongLink
            : TransferVerdict.NotTold;

    private static void Check(IReadOnlyList<SeasonValues> weightRoom, IReadOnlyList<SeasonValues> field)
    {
        ArgumentNullException.ThrowIfNull(weightRoom);
        ArgumentNullException.ThrowIfNull(field);
        if (weightRoom.Count == 0 || field.Count == 0)
            throw new ArgumentException($"{(weightRoom.Count == 0 ? "No weight-room" : "No field")} metric is given; name at least one.", weightRoom.Count == 0 ? nameof(weightRoom) : nameof(field));
        if (weightRoom.Concat(field).GroupBy(v => v.Metric.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new ArgumentException($"The metric '{twice.Key}' is given twice; each belongs on one side, once.", nameof(field));
    }
}

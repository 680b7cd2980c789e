using System.Globalization;
using Analytics.Metrics.Transfer;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>Did weight-room gains reach the field: every pair of measures, with the number of pairs taken into account.</summary>
internal static class TransferBlock
{
    private const string Title = "Did weight-room gains reach the field?";

    public static Block Of(SeasonContext season)
    {
        Block[] trials = season.TransferWithTrials is { } with && Trials(with) is { Pairs.Count: > 0 } own ? [.. OfTrials(season, own)] : [];
        if (season.Transfer is not { } study)
            return new Section(Title, "Cannot be told: it takes a weight-room measure and a field measure done on two occasions by enough players.", trials);
        return new Section(Title, study.Sentence,
        [
            Matrix(study),
            new Note($"Correlation of players' gains over the season, as measured, with an interval that holds for all pairs together; +1: who gained more than the squad in one gained more in the other, 0: nothing. What the calendar gave to everybody is taken off{(study.Pairs.Any(p => p.Gains is { ReliabilityX: null }) ? ", what one good day gives to both tests is not where testing days are too few" : ", and what one good day gives to both tests")}. A gain is an improvement: less time counts as gain."),
            study.Judged == 0 ? new Together() : new Folded($"{Computed(study)} as a picture", [Picture(study)]) { ScreenOnly = true },
            new Folded("Behind each pair: calendar, errors, starting level and training age, slopes", TransferTables.Of(season, study)),
            new Folded("Each pair in one sentence", [Sentences(study)]) { ScreenOnly = true },
            .. trials,
        ]);
    }

    // Judged among all pairs, so that looking at one more costs it and not the others.
    private static TransferStudy Trials(TransferStudy study) => study with { Pairs = [.. study.Pairs.Where(p => p.WeightRoom.Metric.IsTrial || p.Field.Metric.IsTrial)] };

    private static IEnumerable<Block> OfTrials(SeasonContext season, TransferStudy study)
    {
        yield return DataTable.Of("Gains of trial metrics beside the others", study.Pairs, t => t
            .Text("Pair", p => TransferTables.Name(p))
            .Numeric("Players", "", p => new Cell(p.Athletes.ToString(CultureInfo.InvariantCulture)))
            .Numeric("Gain with gain", "", Shown));
        yield return new Note(string.Create(CultureInfo.InvariantCulture, $"Pairs with a trial metric are adjusted for all {study.Judged} pairs, those further up included; those further up are adjusted for themselves alone, as without it."));
        yield return new Folded("Behind each pair with a trial metric", [.. TransferTables.Of(season, study)]);
        yield return new Folded("Each pair with a trial metric in one sentence", [Sentences(study)]) { ScreenOnly = true };
    }

    private static string Computed(TransferStudy study)
    {
        var count = study.Pairs.Count(p => p.Gains is not null);
        return count == study.Pairs.Count ? $"All {count} pairs" : $"The {count} of {study.Pairs.Count} pairs that could be computed";
    }

    private static DataTable Matrix(TransferStudy study) => DataTable.Of("Gains in the weight room beside gains on the field", study.WeightRoom, t =>
    {
        t.Text("Weight room", w => w.Metric.Label);
        foreach (var field in study.Field) t.Numeric(Words.Head(field.Metric), "", w => Shown(study.Pair(w.Metric.Id, field.Metric.Id)!));
    });

    private static Cell Shown(TransferPair pair)
        => pair.Gains is not { } gains ? new Cell(null, pair.GainsAlike ? "all gained the same" : "not computed")
            : new Cell(Figures.Signed(gains.Value, 2), $"{Figures.Limits(pair.Simultaneous?.Low, pair.Simultaneous?.High, 2, signed: true)} {Says(pair).Replace(' ', '\u00a0')}".Trim(), ToneOf(pair));

    private static Tone ToneOf(TransferPair pair) => pair.Verdict switch { TransferVerdict.WentTogether => Tone.Gain, TransferVerdict.WentOpposite => Tone.Loss, _ => Tone.Plain };

    private static string Says(TransferPair pair) => pair.Verdict switch
    {
        TransferVerdict.WentTogether => pair.SharedInputs.Count > 0 ? "went together, partly arithmetic" : "went together",
        TransferVerdict.WentOpposite => "went opposite ways",
        TransferVerdict.AgainstStrongLink => "no strong link",
        TransferVerdict.NoSpreadSeen => "gains too alike to tell",
        TransferVerdict.NotComputed => "not computed",
        _ => "cannot tell yet",
    };

    private static IntervalPlot Picture(TransferStudy study) => new()
    {
        Still = true,
        Title = "Gain with gain, every pair",
        Remark = "The intervals hold for all pairs together at 95\u2009%, so each is wider than that of a pair looked at alone.",
        NameHead = "Pair",
        Axis = new Axis("correlation of gains", "", 2),
        Rows = [.. study.Pairs.Where(p => p.Gains is not null).Select(p => new IntervalRow(
            TransferTables.Name(p), p.Gains!.Value, p.Simultaneous?.Low, p.Simultaneous?.High, Says(p), ToneOf(p),
            Note: p.Athletes == 1 ? "1 player" : string.Create(CultureInfo.InvariantCulture, $"{p.Athletes} players")))],
    };

    private static DataTable Sentences(TransferStudy study) => DataTable.Of("What can be said of each pair", study.Pairs, t => t
        .Text("Pair", p => TransferTables.Name(p))
        .Text("In a sentence", p => p.Sentence));
}

using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Load;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Notebooks.WholeSeason;

namespace Analytics.Notebooks.Bench;

/// <summary>Whether an idea moves when players train, and more with those who train more.</summary>
internal static class MovementQuestions
{
    public static IEnumerable<CardQuestion> Of(BenchContext bench, SketchCard card, ShownUnit unit)
    {
        yield return Moves(card, unit);
        yield return Dose(bench, card);
    }

    private static CardQuestion Moves(SketchCard card, ShownUnit unit)
    {
        const string question = "Does it move over the season?";
        if (card.Movement is not { } movement) return new(question, "cannot tell", "", "nobody was tested on two occasions", Tone.Muted);
        var mean = movement.Mean.Mean;
        var answer = movement.Moved switch { null => "cannot tell", false => "cannot be told from none", _ => Direction(card.Sketch.Better, mean.Value) };
        var standardised = movement.Paired is { } p ? $"; {Figures.SignedInterval(p.Z, p.ZInterval, 1)} SD of the changes" : "";
        var errors = movement.InTypicalErrors is { } i ? FormattableString.Invariant($"; {Math.Min(Math.Abs(i.Low), Math.Abs(i.High)):0.0} to {Math.Max(Math.Abs(i.Low), Math.Abs(i.High)):0.0} typical errors") : "";
        if (movement.Moved != true) errors = "";
        return new(question, answer, $"squad mean {unit.ChangeText(mean.Value, mean.Interval)}{standardised}{errors}",
            $"{Words.Players(mean.N)}, {Words.Date(movement.From)} to {Words.Date(movement.To)}; {Words.Players(movement.Gains)} clearly better, {(movement.Losses == 0 ? "none" : Words.Count(movement.Losses))} worse. Without a comparison group training cannot be told from growing up or practice in the test");
    }

    private static string Direction(Direction better, double change) => better switch
    {
        Metrics.Catalogue.Direction.Neither => change > 0 ? "up" : "down",
        Metrics.Catalogue.Direction.Higher => change > 0 ? "yes, for the better" : "yes, for the worse",
        _ => change < 0 ? "yes, for the better" : "yes, for the worse",
    };

    private static CardQuestion Dose(BenchContext bench, SketchCard card)
    {
        const string question = "More with those who train more?";
        if (bench.Trained is not { } trained) return new(question, "cannot tell", "", "no training was written down between two testing days", Tone.Muted);
        var looks = DoseLooks.Of(DosePairs.Of(bench.Squad.Profile, trained, card.Sketch.Metric));
        var known = DosePairs.Kinds.Zip(looks.Pairs, looks.AdjustedP).Where(k => k.Second.Rank is not null).ToList();
        if (known.Count == 0) return new(question, "cannot tell", "", looks.Pairs[0].NotComputable ?? "too few players", Tone.Muted);
        var best = known.MinBy(k => k.Third)!;
        return new(question, best.Third <= 0.05 ? best.Second.Rank!.Value > 0 ? "yes" : "less with them" : "no sign of it",
            string.Join("; ", known.Select(k => $"{k.First.Name()} {Figures.Signed(k.Second.Rank!.Value, 2)} {Figures.Limits(k.Second.Rank.Interval?.Low, k.Second.Rank.Interval?.High, 2, signed: true)}".TrimEnd())),
            $"rank correlation of gain and dose, {Words.Date(trained.Before.Date)} to {Words.Date(trained.After.Date)}, {known.Max(k => k.Second.Points.Count)} players at most; judged with the number of looks counted, intervals are those of single looks. No evidence of cause");
    }
}

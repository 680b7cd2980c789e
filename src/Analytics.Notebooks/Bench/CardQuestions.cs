using Analytics.Metrics.Bench;
using Analytics.Metrics.Catalogue;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Statistics;

namespace Analytics.Notebooks.Bench;

/// <summary>What is asked of every idea, in the order a reviewer asks it.</summary>
internal static class CardQuestions
{
    public static DataTable Of(BenchContext bench, SketchCard card)
    {
        var unit = bench.Unit(card.Sketch.Metric);
        return DataTable.Of("What was asked, and what came out", All(bench, card, unit), t => t
            .Text("Question", q => q.Question)
            .Text("Answer", q => new Cell(q.Answer, "", q.Tone))
            .Text("Figure", q => q.Figure)
            .Text("What it rests on", q => q.Note));
    }

    private static IEnumerable<CardQuestion> All(BenchContext bench, SketchCard card, ShownUnit unit)
    {
        yield return Returns(card);
        yield return Error(card, unit);
        yield return Coarse(card, unit);
        yield return New(card, bench.Squad.Rule);
        yield return Ends(card);
        yield return Mass(card);
        foreach (var q in MovementQuestions.Of(bench, card, unit)) yield return q;
        foreach (var q in ConditionQuestions.Of(card, unit)) yield return q;
        yield return Carried(card, unit);
        yield return Cost(card);
    }

    private static CardQuestion Returns(SketchCard card) => card.Repeats switch
    {
        { Kind: RepeatKind.None } => new("Does it return?", "nobody knows", "", "no retest days, no second attempt, no second occasion: retest 20 players within a week", Tone.Loss),
        { Value: var icc, Interval: { } i } r => new("Does it return?", i.Low <= 0 ? "no sign of it" : i.Low >= 0.75 ? "well" : icc >= 0.75 ? "probably well" : "in part",
            Text("ICC", icc, i, 2), r.Kind switch
            {
                RepeatKind.RetestDays => $"{Words.Players(r.Athletes)} on two days within a week",
                RepeatKind.SameDay => $"{Words.Players(r.Athletes)}, attempts of one day: an upper limit, the day itself is not repeated",
                _ => $"{Words.Players(r.Athletes)}, occasions weeks apart: a lower limit, players change between them",
            }, i.Low <= 0 ? Tone.Loss : Tone.Plain),
        _ => new("Does it return?", "cannot tell", ""),
    };

    private static CardQuestion Error(SketchCard card, ShownUnit unit)
    {
        var quality = card.Quality;
        if (quality.TypicalError is not { } error) return new("How far is one test day off?", "no error known", "", quality.Reliability.Basis, Tone.Muted);
        var level = Math.Abs(quality.Level ?? 0);
        var percent = level > 0 && card.Sketch.Metric.IsAmount ? FormattableString.Invariant($"{100 * error / level:0.0} % of the mean (CV)") : "";
        var basis = quality.Reliability.HoldsDayToDayVariation ? quality.Reliability.Basis : $"{quality.Reliability.Basis}; a lower limit";
        return new("How far is one test day off?", quality.Reliability.HoldsDayToDayVariation ? percent.Length > 0 ? percent : "see the figure" : "not known between days",
            $"typical error {Amount(unit, error, quality.TypicalErrorInterval)}", basis);
    }

    private static CardQuestion Coarse(SketchCard card, ShownUnit unit)
    {
        var quality = card.Quality;
        if (quality.DetectableChange is not { } sees || quality.Worthwhile.Value is not (> 0 and var matters))
            return new("Does it see a change that matters?", "cannot tell", "", quality.DetectableChange is null ? "no error between days is known" : quality.Worthwhile.Basis, Tone.Muted);
        bool Feasible(int? days) => days <= quality.Rule.MostDays;
        return new("Does it see a change that matters?", sees <= matters ? "in one player, one day before and one after" : Feasible(quality.DaysForAthlete) ? "in one player, by averaging days" : Feasible(quality.DaysForGroup) ? $"in a group of {quality.GroupSize}, not in one player" : "not with days anybody could give",
            $"sees {Amount(unit, sees, quality.DetectableInterval)}, {Amount(unit, matters, quality.Worthwhile.Interval)} matters",
            quality.DaysForAthlete is { } one && quality.DaysForGroup is { } group ? FormattableString.Invariant($"test days wanted on each occasion: {one} for one player, {group} for a group of {quality.GroupSize}") : "");
    }

    private static CardQuestion New(SketchCard card, BenchRule rule)
    {
        if (card.Overlap is not { } overlap || overlap.BestTwo.Count == 0) return new("Does it say something new?", "cannot tell", "", card.Overlap?.Basis ?? "", Tone.Muted);
        var names = Words.List([.. overlap.BestTwo.Select(Words.Short)]);
        if (overlap.Own is { Value: { } share, Interval: { } i })
            return new("Does it say something new?", rule.IsLittle(overlap.Own) ? "little" : rule.IsItsOwn(overlap.Own) ? "yes" : "cannot tell",
                FormattableString.Invariant($"{100 * share:0} % ({100 * i.Low:0} to {100 * i.High:0} %) of what returns is its own"),
                $"beside {names}; {overlap.Basis}");
        return new("Does it say something new?", "cannot tell", overlap.GivenByTwo is { } given ? FormattableString.Invariant($"{names} give {100 * given:0} % of its differences within groups") : "", overlap.Basis, Tone.Muted);
    }

    private static CardQuestion Ends(SketchCard card)
        => new("Does it run out at an end?", card.Ends.HasFloor ? "at the lower end" : card.Ends.HasCeiling ? "at the upper end" : "no",
            $"{Words.PlayersOf(card.Ends.AtLowest, card.Ends.N)} at the lowest value, {Words.Count(card.Ends.AtHighest)} at the highest",
            FormattableString.Invariant($"more than {100 * EndPile.Much:0} % at one end would be too many [terwee2007]{(card.Ends.OutsideBelieved > 0 ? $"; {card.Ends.OutsideBelieved} outside what is believed" : "")}"), card.Ends.HasFloor || card.Ends.HasCeiling ? Tone.Loss : Tone.Plain);

    private static CardQuestion Mass(SketchCard card)
    {
        if (card.Mass is not { } mass) return new("Is it body mass in other words?", "cannot tell", "", "too few players were weighed", Tone.Muted);
        var rank = Text("rank correlation", mass.Rank.Value, mass.Rank.Interval, 2);
        var exponent = mass.Exponent is { } e ? $"; grows with mass to the power {Look.Figures.Interval(e.Value, e.Interval, 2)}" : "";
        return new("Is it body mass in other words?", Math.Abs(mass.Rank.Value) switch { _ when mass.Rank.Interval is { } i && i.Contains(0) && Math.Max(-i.Low, i.High) > 0.4 => "cannot tell", > 0.9 => "yes", > 0.7 => "largely", > 0.4 => "in part", _ => "hardly" }, rank + exponent,
            $"{Words.Players(mass.N)} of all groups{(mass.LeastWithoutOne is { } low && mass.MostWithoutOne is { } high ? $"; leaving any one out, the power lies between {Look.Figures.Plain(low, 2)} and {Look.Figures.Plain(high, 2)}" : "")}");
    }

    private static CardQuestion Carried(SketchCard card, ShownUnit unit)
    {
        var error = card.Error;
        if (error.ByThemselves is not { } carried) return new("Do its inputs explain its error?", "cannot tell", "", error.Explanation, Tone.Muted);
        return new("Do its inputs explain its error?", error.Ratio is null ? "nothing to set it against" : !error.IsLarge ? "yes" : error.IsExplained ? "yes, taken together" : "no",
            $"carried {Amount(unit, carried, error.ByThemselvesInterval)}{(error.Observed is { } seen ? $", seen {Amount(unit, seen, card.Quality.TypicalErrorInterval)}" : "")}",
            error.Explanation + (error.TakenAsExact.Count > 0 ? $" Taken as exact: {Words.List(error.TakenAsExact)}." : ""));
    }

    private static CardQuestion Cost(SketchCard card)
    {
        var from = card.Cost.Tests.Count == 0 ? "" : "worked out of " + Words.List([.. card.Cost.Tests.Select(t => t.IsDerived ? t.Test : FormattableString.Invariant($"{t.Test} ({t.MinutesPerAthlete:0.#} min a player)"))]) + ", done anyway";
        return new("What does it cost?", card.Cost.ExtraMinutes > 0 ? FormattableString.Invariant($"{card.Cost.ExtraMinutes:0.#} min a player") : "nothing more",
            FormattableString.Invariant($"{card.Cost.ExtraMinutes * card.Quality.SquadSize:0} min for the squad at one station"), from);
    }

    /// <summary>A figure with its interval in brackets; says when none is known.</summary>
    internal static string Text(string what, double? value, Interval? interval, int decimals) => $"{what} {(interval is null ? $"{Look.Figures.Plain(value, decimals)} (no error known)" : Look.Figures.Interval(value, interval, decimals))}";

    /// <summary>An amount of the metric in the unit shown, with one decimal more than its values, as small amounts need.</summary>
    internal static string Amount(ShownUnit unit, double value, Interval? interval)
        // An interval without width is that of a figure whose doubt is not known.
        => Look.Figures.Interval(unit.Of(value), interval is { } i && i.High > i.Low ? unit.Of(interval) : null, unit.Decimals + 1) + Look.Figures.Unit(unit.Symbol);
}

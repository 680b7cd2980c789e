using System.Globalization;
using Analytics.Metrics.Transfer;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Statistics;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>What stands behind each pair of the transfer study.</summary>
internal static class TransferTables
{
    public static IReadOnlyList<Block> Of(SeasonContext season, TransferStudy study) =>
    [
        DataTable.Of("Correlation within players", study.Pairs, t => t
            .Text("Pair", p => new Cell(Name(p), p.SharedInputs.Count > 0 ? $"both hold {Words.List([.. p.SharedInputs])}" : ""))
            .Numeric("Players", "", p => new Cell(p.Athletes.ToString(CultureInfo.InvariantCulture)))
            .Numeric("Over the season", "", p => R(p.OverSeason?.Value, p.OverSeason?.Interval))
            .Numeric("Beyond the calendar", "", p => R(p.BeyondCalendar?.Value, p.BeyondCalendar?.Interval))
            .Numeric("Gain with gain", "", p => R(p.Gains?.Value, p.Gains?.Interval))
            .Numeric("p, all pairs", "", p => P(p.AdjustedP))),
        new Note("Over the season: both measures rise in anybody who trains, so this figure alone says nothing about transfer. Intervals here are those of single pairs." + (study.Blocks.Length == 0 ? "" : $" Testing days: {study.Blocks}")),
        DataTable.Of("What would come anyway", study.Pairs, t => t
            .Text("Pair", p => Name(p))
            .Numeric("Errors alone", "", p => R(p.Errors?.OfGains, null))
            .Numeric("Falling back alone", "", p => R(p.Errors?.FallingBack, null))
            .Numeric("Background alone", "", p => R(p.Background?.FromBackground, null))
            .Numeric("What remains", "", p => R(p.Background?.Remaining, p.Background?.RemainingInterval))),
        new Note("Correlations of gains. Errors alone: what one good day in both tests gives. Falling back alone: what regression to the mean from the starting levels gives. "
            + $"Background: {study.Pairs.Select(p => p.Background?.Basis).OfType<string>().FirstOrDefault() ?? "not known"}; what remains is the correlation of the gains with that held fixed."),
        DataTable.Of("Field change for each worthwhile weight-room change", study.Pairs.Where(p => p.Slope is not null), t => t
            .Text("Pair", p => Name(p))
            .Numeric("For each", "", p => Step(season, p) is { } step ? new Cell(season.Unit(p.WeightRoom.Metric).ChangeText(step * p.WeightRoom.Sense, null)) : Cell.Missing)
            .Numeric("Field change, scatter allowed", "", p => Slope(season, p, p.Slope!.Slope, p.Slope.Interval))
            .Numeric("By a line with error in both", "", p => Slope(season, p, p.Slope!.Deming, p.Slope.DemingInterval))
            .Text("Remark", p => p.Slope!.Reason.Length == 0 ? null : p.Slope.Reason)),
    ];

    internal static string Name(TransferPair pair) => $"{Words.Capital(Words.Short(pair.WeightRoom.Metric))}, {Words.Short(pair.Field.Metric)}";

    private static Cell R(double? r, Interval? interval) => r is { } value ? new Cell(Figures.Signed(value, 2), Figures.Limits(interval?.Low, interval?.High, 2, signed: true)) : Cell.Missing;

    private static Cell P(double? p) => p is { } value ? new Cell(value < 0.001 ? "< 0.001" : value.ToString("0.000", CultureInfo.InvariantCulture)) : Cell.Missing;

    // A slope by the pound or the kilogram is a string of zeros; by the change that matters it is a sentence.
    private static double? Step(SeasonContext season, TransferPair pair) => season.Trend(pair.WeightRoom.Metric).Worthwhile.Value;

    private static Cell Slope(SeasonContext season, TransferPair pair, double? slope, Interval? interval)
    {
        if (slope is not { } value || Step(season, pair) is not { } step) return Cell.Missing;
        var unit = season.Unit(pair.Field.Metric);
        // Gains count as positive in the study; here the sign is that of the measure itself.
        var factor = step * pair.Field.Sense * unit.PerCatalogueUnit;
        double[] ends = interval is { } i ? [factor * i.Low, factor * i.High] : [];
        var decimals = Math.Min(unit.Decimals + 1, 4);
        return new Cell(Figures.Signed(factor * value, decimals, unit.Symbol), ends.Length == 0 ? "" : Figures.Limits(ends.Min(), ends.Max(), decimals, signed: true));
    }
}

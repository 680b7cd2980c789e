using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Notebooks.Units;
using Analytics.Statistics;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>How far players really differ in what they gained: the spread of changes with test error taken off.</summary>
internal static class ResponseBlock
{
    public static Block Of(SeasonContext season)
    {
        if (season.Looked.Count == 0) return new Together();
        var spreads = season.Looked.Select(m => (Metric: m, Spread: ResponseSpread.Of(season.Change(m)))).ToList();
        return new Section("Did players respond differently?",
            "Changes always scatter, since tests wobble. Here the wobble is taken off; what is left is how far true changes differ. It does not say which player is which.",
            DataTable.Of("Spread of true changes", spreads, t => t
                .Text("Measure", s => new Cell(s.Metric.Label, s.Spread.Athletes == 1 ? "1 player over the whole season" : $"{s.Spread.Athletes} players over the whole season"))
                .Numeric("Mean change", "", s => Mean(season, s.Metric, s.Spread))
                .Numeric("SD of true changes", "", s => Spread(season, s.Metric, s.Spread))
                .Text("What it says", s => new Cell(Says(s.Spread)))),
            new Note("An SD below zero is printed as such: the scatter was smaller than test error explains, which happens by chance when players respond alike. The interval of the mean change here is that for others like these players: how differently they responded is in it, so it is wider than that of the squad further up."));
    }

    private static Cell Mean(SeasonContext season, Metric metric, ResponseSpread spread)
        => spread.Mean is { } mean ? Mean(season.Unit(metric), mean.Mean) : Cell.Missing;

    private static Cell Mean(ShownUnit unit, Estimate mean)
        => new(Figures.Signed(unit.Of(mean.Value), unit.Decimals, unit.Symbol), Figures.Limits(unit.Of(mean.Interval?.Low), unit.Of(mean.Interval?.High), unit.Decimals, signed: true));

    private static Cell Spread(SeasonContext season, Metric metric, ResponseSpread spread)
    {
        if (spread.Responses is not { } responses) return Cell.Missing;
        var unit = season.Unit(metric);
        var decimals = unit.Decimals + 1;
        return new Cell(Figures.Plain(unit.Of(responses.StandardDeviation), decimals, unit.Symbol), Figures.Limits(unit.Of(responses.Interval.Low), unit.Of(responses.Interval.High), decimals));
    }

    // In no unit: the library's own sentence speaks the unit of the catalogue.
    private static string Says(ResponseSpread spread) => spread switch
    {
        { Responses: null } => $"Cannot be told: {spread.Reason ?? "too few players"}.",
        { Responses: { Interval.High: <= 0 } } => "Changes differ less than test error explains: no difference found, the error may be too large for this squad.",
        { Responses: { Variance: <= 0 } } => "No difference found beyond test error.",
        { Responses: { Interval.Low: <= 0 } } => "Perhaps; the data do not tell whether players responded differently or alike.",
        _ => "Players responded differently, beyond test error.",
    };
}

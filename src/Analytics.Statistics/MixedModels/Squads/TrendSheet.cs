using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels.Squads;

/// <summary>A squad's trend laid out for print.</summary>
internal static class TrendSheet
{
    public static ResultSheet Of(SquadTrend trend)
    {
        var lines = trend.Slopes.Select(s => s.PerDay.Line)
            .Concat(trend.Squad.Concat(trend.Groups).Select(m => m.Mean.Line with { Note = m.Athletes == 1 ? "1 athlete" : $"{m.Athletes} athletes" })).ToList();
        return new($"Trend of {trend.ResponseName}",
            $"linear mixed models by restricted maximum likelihood, random level{(trend.HasRandomSlopes ? " and slope" : string.Empty)} of each athlete, degrees of freedom by Satterthwaite [bates2015; kuznetsova2017]",
            lines.Count > 0 ? lines : [new("trend", null) { Note = "no model could be fitted" }])
        {
            Basis = $"{trend.Rows} rows of {trend.Athletes} athletes",
            Remarks = trend.Remarks,
        };
    }
}

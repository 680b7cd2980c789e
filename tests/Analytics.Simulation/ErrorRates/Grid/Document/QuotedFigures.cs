using System.Globalization;
using Analytics.Simulation.ErrorRates.Grid.Rates;

namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>The few figures a report quotes about itself, as a file of its own.</summary>
public sealed record QuotedFigures(int Athletes, int Degrees, RateCount Interval, RateCount Mean, RateCount FalseFlag, RateCount AtLeastOne)
{
    /// <summary>One line for each squad size and error; the false-flag rate is the worst of the reliabilities.</summary>
    public static IReadOnlyList<QuotedFigures> Of(GridStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        var known = study.Rates.Where(r => r.Entry is ReportRule).ToDictionary(r => r.Case.Label, r => r.Count);
        RateCount At(int n, int df, int question, double icc = ReportRule.Middle) => known[ReportRule.Label(n, df, icc, ReportRule.Questions[question])];
        return
        [
            .. from df in ReportRule.Degrees
               from n in ReportRule.Athletes
               select new QuotedFigures(n, df, At(n, df, 0), At(n, df, 1), ReportRule.Reliabilities.Select(icc => At(n, df, 2, icc)).MaxBy(c => c.Rate)!, At(n, df, 3)),
        ];
    }

    public static string Csv(GridStudy study) => string.Concat(
        Of(study).Select(f => f.Line()).Prepend("athletes,degrees_of_freedom,player_interval_percent,mean_interval_percent,unchanged_clear_percent,at_least_one_percent").Select(l => l + "\n"));

    public static MarkdownTable Table(GridStudy study)
    {
        var table = new MarkdownTable("players", "df of TE", "interval of a player holds [%]", "interval of the mean holds [%]", "clear verdict on an unchanged player [%]", "one or more in the squad [%]");
        foreach (var figures in Of(study)) table.Row(figures.Line().Split(','));
        return table;
    }

    private string Line() => string.Join(',', Athletes.ToString(CultureInfo.InvariantCulture), Degrees.ToString(CultureInfo.InvariantCulture),
        Cells.Percent(Interval.Rate), Cells.Percent(Mean.Rate), Cells.Percent(FalseFlag.Rate), Cells.Percent(AtLeastOne.Rate));
}

using System.Globalization;
using Analytics.Metrics.Load;
using Analytics.Metrics.Seasons;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>How the numbers of the season came about, and the cautions.</summary>
internal static class SeasonMethods
{
    public static Block Of(SeasonContext season)
    {
        var table = DataTable.Of("Measures of this report", season.Looked, t => t
            .Text("Measure", m => new Cell(m.Label, m.Meaning))
            .Text("Formula", m => m.Formula)
            .Text("Value of the day", m => m.Rule == Analytics.Metrics.Catalogue.TrialRule.Best ? "best attempt" : "mean of the attempts")
            .Text("Modelled in", m => season.Trend(m).ScaleReason)
            .Text("Typical error", m => new Cell(ErrorText.Of(season.Trend(m).Reliability, season.Unit(m)), season.Trend(m).Reliability.Basis))
            .Text("Not compared", m => season.Values(m).NotCompared.Count == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"{season.Values(m).NotCompared.Count} values on another scale"))
            .Text("Sources", Words.Sources));
        return new Section("How the numbers came about", "", new Folded("Methods and sources",
            new Definitions([
                ("Trends", "Linear mixed model by restricted maximum likelihood with a level and, where the data bear it, a slope of each player. Intervals are those of the mean of these players: test error, and players who missed a day; Student's t with the degrees of freedom of the residual variance. [bates2015] [henderson1975]"),
                ("Periods", season.Measures.Count == 0 ? "none" : season.Trend(season.Measures[0]).Periods.Rule),
                ("Change of a player", "His last value less his baseline, the mean of both days where he did both of a retest. Its error is the typical error, less where values were averaged; the equation's error is added where a maximum was estimated."),
                ("Verdicts", season.Profile.Rule.Statement),
                ("Too small to matter", $"A change under {season.Profile.WorthwhileShare.ToString(CultureInfo.InvariantCulture)} of the spread between players of the same group at the start, test error taken off, or a figure the coach has set."),
                ("By chance", "The number of flags that would be raised at most on average if nobody had changed: comparisons times the rule's largest rate of false flags. \u201CSeldom\u201D is a number passed at most once in 40 such seasons if comparisons were independent; measures of one run and a shared typical error move together, so it is passed more often than that."),
                ("Spread of true changes", "Variance of the changes less that of test error. [atkinsonbatterham2015] [hopkins2015]"),
                ("Transfer", "A straight line through all days of each player, day effects taken off; the correlation of these gains, the covariance that good days give to both tests taken off; jackknife by player on Fisher's scale. p adjusted by Holm for the number of pairs, intervals widened for it. [holm1979] [bakdash2017]"),
                ("Load", $"Session load is the session's rating times its minutes; monotony is the mean of the daily loads of a week over their SD (divisor {(TrainedStretch.Divisor == SdDivisor.Sample ? "n \u2212 1" : "n")}), rest days as 0; strain is total times monotony. A week with a session that was not rated is not computed; seven equal days give no monotony. [foster1998] [foster2001]"),
                ("Advice on tests", TestQualityRule.Standard.Statement),
                ("How often this is wrong", "Measured on simulated seasons with known truth; see the season study of the project's documentation."),
            ]),
            table,
            new Note("Source keys are listed in the project's references.")));
    }

    public static Block Cautions(SeasonContext season)
    {
        string[] own = [.. season.Looked.SelectMany(m => season.Trend(m).Remarks.Select(r => $"{m.Label}: {r}")).Distinct()];
        return new Together(
            new Cautions(
                "These estimates support a qualified coach's judgement; they are not medical advice and predict no injury. Local rules and licensed staff come first.",
                "That two gains went together does not show that one made the other. A training plan is not proved right by it, nor wrong by its absence.",
                "A season without a comparison group cannot tell training from growing up, practice in the test or the calendar.",
                "Maximal tests need clearance, a warm-up, trained spotters for squat and bench press (never for cleans), and a stop on pain, dizziness, lost technique or two misses."),
            own.Length == 0 ? new Together() : new Folded("What the models could not do", [.. own.Select(r => new Note(r))]));
    }
}

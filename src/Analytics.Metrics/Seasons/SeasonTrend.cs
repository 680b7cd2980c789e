using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;
using Analytics.Statistics.MixedModels;

namespace Analytics.Metrics.Seasons;

/// <summary>How the squad and its position groups moved over the season in one metric, by a mixed model.</summary>
/// <remarks>
/// Every athlete has a level, and where the data bear it a slope, of his own, so who turned up on a day does not pass for a change of the squad. The means and
/// their intervals are those of these athletes, not of a population (see <see cref="TrendDifference.OthersLikeThem"/>). Amounts whose error is a share
/// of the value are modelled as logarithms and given in the metric's unit. What hits everybody alike on one day (surface, device, weather) is in a mean and not
/// in its interval; <see cref="RetestShift"/> is the only look at it there is. Formulas and limits: docs/methods/season.md.
/// </remarks>
public sealed record SeasonTrend
{
    /// <summary>The values.</summary>
    public required SeasonValues Values { get; init; }

    /// <summary>The periods and how days were taken together.</summary>
    public required SeasonPeriods Periods { get; init; }

    /// <summary>Proportional when logarithms were modelled: the error is then a share of the value.</summary>
    public required ErrorScale Scale { get; init; }

    /// <summary>Why that scale, in words a report can print.</summary>
    public required string ScaleReason { get; init; }

    /// <summary>The course of the squad.</summary>
    public required TrendCourse Squad { get; init; }

    /// <summary>The courses of the groups, in the order of the squad list; groups without a value are left out.</summary>
    public required IReadOnlyList<TrendCourse> Groups { get; init; }

    /// <summary>The athletes with a value and a group, in the order of the squad list.</summary>
    public required IReadOnlyList<AthleteCourse> Athletes { get; init; }

    /// <summary>Athletes with a value who are not in the squad list; they are in no mean.</summary>
    public required IReadOnlyList<string> WithoutGroup { get; init; }

    /// <summary>The smallest worthwhile change, by the spread of the first values.</summary>
    public required SmallestWorthwhileChange Worthwhile { get; init; }

    /// <summary>The typical error known.</summary>
    public required MetricReliability Reliability { get; init; }

    /// <summary>The rule.</summary>
    public required VerdictRule Rule { get; init; }

    /// <summary>Whether athletes have slopes of their own in all models; if not, a remark says why, and how differently they responded widens the intervals there.</summary>
    public required bool HasOwnSlopes { get; init; }

    /// <summary>What the models could not do, in words; may be empty.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Mean change over the season's retest days, between which nobody is expected to have changed; null without an own retest.</summary>
    public MeanChange? RetestShift => Reliability.Shift;

    /// <summary>What to bear in mind, in words a report can print.</summary>
    public IReadOnlyList<string> Cautions
        => [.. Reliability.Cautions, .. Remarks, "What hits everybody alike on one day (surface, device, weather, practice in the test) is in a mean and not in its interval.", .. ShiftCaution];

    private IEnumerable<string> ShiftCaution
    {
        get
        {
            if (RetestShift?.Mean is not { Interval: { } interval } shift) yield break;
            var (value, low, high) = (Number(shift.Value), Number(interval.Low), Number(interval.High));
            yield return interval.Contains(0)
                ? $"Check by the retest days: the mean of the squad moved by {value} ({low} to {high}) {Values.Metric.Unit} between them, which may be nothing."
                : $"Check by the retest days: the mean of the squad moved by {value} ({low} to {high}) {Values.Metric.Unit} between them, when no true change is expected. A season change of that size may be the day's.";
        }
    }

    /// <summary>Fits the models.</summary>
    /// <param name="profile">The squad with its groups, retest days and rule.</param>
    /// <param name="values">The metric over the season.</param>
    public static SeasonTrend Of(SquadProfile profile, SeasonValues values)
    {
        ArgumentNullException.ThrowIfNull(profile);
        ArgumentNullException.ThrowIfNull(values);
        var reliability = values.Reliability(profile);
        var periods = SeasonPeriods.Of(values.Dates, profile.Retests);
        var groups = profile.Squad.GroupBy(m => m.Id, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First().Group, StringComparer.Ordinal);
        var (proportional, why) = ScaleOf(values, reliability);
        var rows = TrendRows.Of(values, reliability, periods, groups, proportional);
        // Said here in the metric's own words: the model would speak of logarithms.
        var alike = rows.All.Count > 1 && rows.All.All(r => r.Value == rows.All[0].Value);
        var trend = rows.All.Count > 0 && periods.All.Count > 1 && !alike ? SquadTrend.Of(rows.All, values.Metric.Label, profile.Rule.Level) : null;
        var worthwhile = FirstValues.Worthwhile(profile, values, periods, reliability);
        var courses = new TrendCourses(profile, values.Metric, periods, rows, trend, worthwhile, proportional);
        return new()
        {
            Values = values,
            Periods = periods,
            Scale = proportional ? ErrorScale.Proportional : ErrorScale.Constant,
            ScaleReason = why,
            Squad = courses.Of(null),
            Groups = [.. profile.Squad.Select(m => m.Group).Distinct().Where(rows.Groups.Contains).Select(courses.Of)],
            Athletes = [.. profile.Squad.Where(m => values.Of(m.Id).Count > 0).Select(m => new AthleteCourse(m.Id, m.Group, values.Of(m.Id)))],
            WithoutGroup = [.. values.Athletes.Where(id => !groups.ContainsKey(id))],
            Worthwhile = worthwhile,
            Reliability = reliability,
            Rule = profile.Rule,
            HasOwnSlopes = trend?.HasRandomSlopes ?? false,
            Remarks = trend?.Remarks ?? (alike ? ["All values are the same, so there is no trend to fit."] : []),
        };
    }

    private static (bool Proportional, string Why) ScaleOf(SeasonValues values, MetricReliability reliability)
    {
        if (!values.Metric.IsAmount) return (false, "units: the metric is no amount above 0");
        if (values.Values.Any(v => v.Value <= 0)) return (false, "units: a value is not above 0");
        if (reliability.HoldsDayToDayVariation && reliability.Scale == ErrorScale.Constant) return (false, "units: the error is the same number of units at every level");
        return (true, "logarithms: the error of an amount is a share of it, so heavy and light, fast and slow athletes err alike");
    }

    private string Number(double value)
        => value.ToString("0." + new string('0', Values.Metric.Decimals + 1), System.Globalization.CultureInfo.InvariantCulture);
}

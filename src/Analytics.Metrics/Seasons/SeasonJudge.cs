using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Seasons;

/// <summary>Judges one athlete's season.</summary>
internal sealed class SeasonJudge(
    SquadProfile profile, SeasonValues values, MetricReliability reliability, SmallestWorthwhileChange worthwhile, SeasonPeriods occasions, SeasonPeriods periods)
{
    /// <summary>The change of an athlete with a value; null when he was tested on one occasion only.</summary>
    public AthleteSeason? Of(SquadMember member)
    {
        var own = values.Of(member.Id);
        var (first, last) = (occasions.NumberOf(own[0].Date), occasions.NumberOf(own[^1].Date));
        if (first == last) return null;
        var before = Mean([.. own.TakeWhile(v => occasions.NumberOf(v.Date) == first)]);
        var after = Mean([.. own.Where(v => occasions.NumberOf(v.Date) == last)]);
        var whole = periods.NumberOf(own[0].Date) == 0 && periods.NumberOf(own[^1].Date) == periods.All.Count - 1;
        return Judge(new(member.Id, member.Group, before, after, null, null, Verdict.CannotTellYet, null)
        {
            IsWholeSeason = whole,
            Stretch = whole ? null : string.Create(CultureInfo.InvariantCulture, $"tested from {own[0].Date:d MMMM yyyy} to {own[^1].Date:d MMMM yyyy} only"),
        });
    }

    private AthleteSeason Judge(AthleteSeason season)
    {
        var (before, after) = (season.Baseline.Value, season.Last.Value);
        // A proportional error is taken at the middle of the two values, which is nearly independent of their difference.
        var error = reliability.ErrorAt((before.Value + after.Value) / 2) ?? 0;
        if (error <= 0)
            return season with { Reason = reliability.Error is null ? reliability.Basis : "a percentage error says nothing about values that average 0" };

        var equation = EquationInChange.Of(before, after, reliability);
        var change = IndividualChange.Between(before.Value, after.Value, error, reliability.DegreesOfFreedom, season.Baseline.Occasions, season.Last.Occasions)
            .WithKnownError(Math.Sqrt(equation.Variance));
        var judged = season with
        {
            Change = change,
            Interval = change.Interval(profile.Rule.Level),
            Remark = equation.Remark,
            SharedError = equation.Shared,
            HasEquationError = equation.Variance > 0,
        };
        return reliability.HoldsDayToDayVariation
            ? judged with { Verdict = profile.Rule.Judge(change, worthwhile.Value, values.Metric.Better == Direction.Lower) }
            : judged with { Reason = "only same-day attempts tell of error here; they leave out day-to-day variation, so the interval is too narrow for a verdict" };
    }

    private static OccasionMean Mean(IReadOnlyList<DayValue> days)
    {
        if (days.Count == 1) return new(days[0], 1);
        // Each day counts once, however many attempts it had; lasting errors of an equation do not average out, fresh ones do.
        var equation = EquationError.OfMean([.. days.Select(d => new TrialValue(d.Value) { Equation = d.Equation })]);
        double? error = days.All(d => d.StandardError.HasValue) ? Math.Sqrt(days.Sum(d => d.StandardError!.Value * d.StandardError.Value)) / days.Count : null;
        var mean = new DayValue(days[0].AthleteId, days[^1].Date, days.Average(d => d.Value), [.. days.SelectMany(d => d.Attempts)], error, [.. days.SelectMany(d => d.Doubts).Distinct()])
        {
            Equation = equation,
            HowMade = string.Join(" and ", days.Select(d => d.HowMade).Where(h => h.Length > 0).Distinct()),
            ErrorDegreesOfFreedom = days.Min(d => d.ErrorDegreesOfFreedom),
        };
        return new(mean, days.Count);
    }
}

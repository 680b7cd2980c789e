using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Change;

namespace Analytics.Metrics.Bench;

/// <summary>Values on another scale than the one compared.</summary>
/// <param name="Series">The other scale.</param>
/// <param name="Values">Athlete-days on it.</param>
/// <param name="Shift">The other scale less the one compared, of athletes with both on one day; null when nobody has.</param>
public sealed record OtherScale(string Series, int Values, MeanChange? Shift);

/// <summary>Whether a metric depends on how, when and by whom it is tested.</summary>
/// <param name="Series">The scale compared; empty when there is one only, null without values.</param>
/// <param name="Others">Other scales.</param>
/// <param name="RetestShift">Mean change from the first to the second retest day (practice, tiredness, weather); null without a retest.</param>
/// <param name="Testers">Contrasts of two testers with enough athletes, most athletes first.</param>
/// <param name="TestersNoted">Different testers noted beside the trials it uses.</param>
public sealed record Conditions(string? Series, IReadOnlyList<OtherScale> Others, MeanChange? RetestShift, IReadOnlyList<TesterContrast> Testers, int TestersNoted)
{
    internal static Conditions Of(BenchSquad squad, MetricSketch sketch, SeasonValues values)
    {
        var days = squad.Days.SelectMany(d => d).Where(d => values.Of(d.AthleteId).Any(v => v.Date == d.Date)).ToList();
        var others = values.NotCompared.Where(n => double.IsFinite(n.Value)).GroupBy(n => n.Series, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new OtherScale(g.Key, g.Count(), Mean([.. g.Select(n => n.Value - values.Of(n.AthleteId).FirstOrDefault(v => v.Date == n.Date)?.Value).OfType<double>()]))).ToList();
        var found = new List<(AthleteDay Day, string Tester)>();
        // Days without some trials are made up: what goes wrong on them is not told, and a formula that never ends on one is left behind.
        var quiet = values.Metric with { FromTrials = day => sketch.Attempts(day).OfType<TrialValue>() };
        var tested = TimeLimit.Kept(() => found = [.. days.SelectMany(d => TesterUsed.Of(quiet, d) is { } t ? new[] { (d, t) } : [])], sketch.Limits.MadeUp) ? found : [];
        return new(values.Series, others, values.Reliability(squad.Profile).Shift, Contrasts(squad, values, tested), tested.Select(t => t.Tester).Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }

    private static List<TesterContrast> Contrasts(BenchSquad squad, SeasonValues values, List<(AthleteDay Day, string Tester)> tested)
    {
        var occasions = SeasonPeriods.Occasions(values.Dates, squad.Profile.Retests);
        var pairs = tested.GroupBy(t => (t.Day.AthleteId, Occasion: occasions.NumberOf(t.Day.Date))).SelectMany(g =>
        {
            var inOrder = g.OrderBy(t => t.Day.Date).ToList();
            // One change of testers an athlete and occasion: a second one would share a day with the first.
            return inOrder.Zip(inOrder.Skip(1)).Where(p => !Same(p.First.Tester, p.Second.Tester)).Take(1).Select(p =>
            {
                var (a, b) = (p.First, p.Second);
                var swap = string.CompareOrdinal(Key(a.Tester), Key(b.Tester)) > 0;
                var change = Value(values, b.Day) - Value(values, a.Day);
                return (First: Key(swap ? b.Tester : a.Tester), Second: Key(swap ? a.Tester : b.Tester), Change: swap ? -change : change, Later: !swap);
            });
        });
        return [.. pairs.GroupBy(p => (p.First, p.Second)).Where(g => g.Count() >= squad.Rule.Fewest)
            .Select(g => TesterContrast.Of(g.Key.First, g.Key.Second, [.. g.Select(p => (p.Change, p.Later))]))
            .OrderByDescending(c => c.Shift.N).ThenBy(c => c.First, StringComparer.Ordinal)];

        // As first noted, so that "kb" and "KB" are one.
        string Key(string tester) => tested.First(t => Same(t.Tester, tester)).Tester;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    private static double Value(SeasonValues values, AthleteDay day) => values.Of(day.AthleteId).First(v => v.Date == day.Date).Value;

    private static MeanChange? Mean(IReadOnlyList<double> differences) => differences.Count > 0 ? MeanChange.Of(differences) : null;
}

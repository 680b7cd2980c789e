using System.Globalization;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.OnTrial;

/// <summary>A thing that went wrong in a formula, for whomever.</summary>
/// <param name="Label">Label of the metric, without the mark.</param>
/// <param name="Message">What happened and what to do; begins with a small letter.</param>
/// <param name="Where">The athletes by identifier and the days.</param>
/// <param name="Asked">How many athletes the formula was asked for.</param>
internal sealed record FormulaFailure(string Label, string Message, IReadOnlyList<(string AthleteId, DateOnly Date)> Where, int Asked)
{
    private const int NamedPlayers = 3;
    private const int NamedDays = 3;

    /// <summary>What went wrong so far in a sketch that was asked for some days.</summary>
    public static IEnumerable<FormulaFailure> Of(MetricSketch sketch, IEnumerable<AthleteDay> days)
    {
        var asked = days.Where(d => d.Trials.Any(t => sketch.Kind is null || sketch.Kind.IsInstanceOfType(t))).Select(d => d.AthleteId).ToHashSet(StringComparer.Ordinal);
        return sketch.Troubles.GroupBy(t => t.Message, StringComparer.Ordinal)
            .Select(g => new FormulaFailure(TrialMark.Name(sketch.Label), g.Key, [.. g.Select(t => (t.AthleteId, t.Date))], asked.Count));
    }

    /// <summary>The failure in one sentence: which metric, for whom, what happened and what to do.</summary>
    /// <param name="name">Name of an athlete as the report calls him.</param>
    /// <param name="day">A day in words.</param>
    public string Words(Func<string, string> name, Func<DateOnly, string> day)
    {
        var players = Where.GroupBy(w => w.AthleteId, StringComparer.Ordinal).ToList();
        return $"{Label}, {For()}: {Message}";

        string For()
        {
            if (players.Count > 1 && players.Count >= Asked) return string.Create(CultureInfo.InvariantCulture, $"for all {players.Count} players");
            var named = players.Take(NamedPlayers).Select(p => $"{name(p.Key)} on {Days([.. p.Select(w => w.Date)], day)}").ToList();
            return players.Count <= NamedPlayers ? $"for {TestingDay.Words.List(named)}"
                : string.Create(CultureInfo.InvariantCulture, $"for {players.Count} of {Asked} players, {string.Join(", ", named)} and {players.Count - NamedPlayers} more");
        }
    }

    private static string Days(IReadOnlyList<DateOnly> dates, Func<DateOnly, string> day)
        => dates.Count <= NamedDays ? TestingDay.Words.List([.. dates.Select(day)]) : string.Create(CultureInfo.InvariantCulture, $"{dates.Count} days");
}

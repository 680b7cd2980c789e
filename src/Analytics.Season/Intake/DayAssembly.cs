using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Season.Intake;

/// <summary>Puts the kept trials together by day and athlete, with the body mass that holds on the day.</summary>
internal sealed class DayAssembly(IReadOnlyList<Athlete> athletes)
{
    private readonly Dictionary<string, BodyMeasure> latest = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Length> statures = athletes.Where(a => a.Stature is not null).ToDictionary(a => a.Id, a => a.Stature!.Value, StringComparer.Ordinal);

    /// <summary>Makes the day; days must come by date.</summary>
    public TestingDay Make(CandidateDay day)
    {
        var trials = new Dictionary<string, List<Trial>>(StringComparer.Ordinal);
        foreach (var candidate in day.Candidates)
        {
            var trial = candidate.Trial;
            if (!trials.TryGetValue(trial.AthleteId, out var list)) trials.Add(trial.AthleteId, list = []);
            list.Add(trial);
            candidate.CountKept();
            if (trial is not BodyMeasure body) continue;
            latest[body.AthleteId] = body;
            if (body.Stature is { } stature) statures[body.AthleteId] = stature;
        }

        return new TestingDay { Date = day.Date, Athletes = [.. athletes.Where(a => trials.ContainsKey(a.Id)).Select(a => Athlete(a.Id, day.Date, trials[a.Id]))] };
    }

    private AthleteDay Athlete(string id, DateOnly date, List<Trial> trials)
    {
        var body = latest.GetValueOrDefault(id);
        return new AthleteDay
        {
            AthleteId = id,
            Date = date,
            Trials = trials,
            BodyMass = body?.BodyMass,
            BodyMassDate = body?.Date,
            Stature = statures.TryGetValue(id, out var stature) ? stature : null,
        };
    }
}

using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Season;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>A week as one page shows it: of the whole squad, or of one player without a value of anybody else.</summary>
/// <param name="Week">The week.</param>
/// <param name="Only">The athlete whose page it is; null for the squad.</param>
internal sealed record WeekView(WeekContext Week, Athlete? Only)
{
    /// <summary>The squad.</summary>
    public const string All = "all";

    /// <summary>Reads the setting.</summary>
    /// <exception cref="SeasonException">There is no such athlete; the message names none.</exception>
    public static WeekView Of(WeekContext week, string athlete)
    {
        if (athlete is All or "") return new(week, null);
        return new(week, week.Season.Athletes.FirstOrDefault(a => a.InLatestSeason && a.Id == athlete)
            ?? throw new SeasonException($"athlete is '{athlete}', and athletes.csv has no such athlete_id. Use one of its athlete_id, or \"{All}\" for the whole squad."));
    }

    /// <summary>Players who train and whom the page shows.</summary>
    public IReadOnlyList<PlanPlayer> Players => Only is null ? Week.Squad.Players : [.. Week.Squad.Players.Where(p => p.Id == Only.Id)];

    /// <summary>Sessions the page shows.</summary>
    public IReadOnlyList<UnitSession> Sessions => Only is null ? Week.Sessions : [.. Week.Sessions.Where(s => s.Players.Contains(Only.Id))];

    public WeekPlan? Plan => Week.Answer.Plan;

    public IEnumerable<ServedNeed> Needs => Plan?.Needs.Where(n => Only is null || n.AthleteId == Only.Id) ?? [];

    public IEnumerable<PlayerNote> Notes(IReadOnlyList<PlayerNote> notes) => notes.Where(n => Only is null || n.AthleteId == Only.Id);

    public string Name(string athleteId) => Week.Player(athleteId).Name;
}

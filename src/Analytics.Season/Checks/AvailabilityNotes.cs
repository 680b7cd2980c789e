using Analytics.Season.Cells;
using Analytics.Season.Intake;
using Analytics.Season.Squad;

namespace Analytics.Season.Checks;

/// <summary>
/// Remarks on results of athletes who are marked injured, ill or absent that day. The results are kept: a tested athlete
/// is more often a spell with a wrong end than a result of somebody else.
/// </summary>
internal static class AvailabilityNotes
{
    /// <summary>Adds one remark for each athlete and day.</summary>
    public static void Add(SeasonIntake intake, IEnumerable<CandidateDay> days, SquadList squad)
    {
        var away = squad.All.Where(a => a.Absences.Count > 0).ToDictionary(a => a.Id, StringComparer.Ordinal);
        foreach (var day in days)
        {
            var counts = day.Candidates.Where(c => away.ContainsKey(c.Trial.AthleteId)).CountBy(c => (c.Trial.AthleteId, c.Trial.Source!.File));
            foreach (var ((id, file), count) in counts)
            {
                var spell = away[id].Absences.FirstOrDefault(a => a.Status != "limited" && a.Covers(day.Date));
                if (spell is null) continue;
                intake.Note(file, $"{CellMarks.Athlete(away[id])} is marked {spell.Status} {AvailabilityReader.Days(spell)} but has {count} result{(count is 1 ? "" : "s")} on {DateText.Iso(day.Date)}; kept. Check the spell or the identifier.");
            }
        }
    }
}

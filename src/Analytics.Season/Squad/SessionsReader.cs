using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>Reads training sessions.</summary>
internal static class SessionsReader
{
    private static readonly Column Date = new("date", needed: true);
    private static readonly Column Focus = new("focus");
    private static readonly NumberColumn Minutes = new("minutes", 1, 600);
    private static readonly NumberColumn Exertion = new("session_rpe", 0, 10);
    private static readonly NumberColumn Contacts = new("jump_contacts", 0, 2000, whole: true);
    private static readonly IReadOnlyList<Column> Columns = [Date, TrialTable.AthleteId, Focus, Minutes, Exertion, Contacts];

    /// <summary>Reads the sessions of a table.</summary>
    public static void Read(SeasonIntake intake, Table table, SquadList squad, SeasonSettings settings, List<TrainingSession> sessions)
        => intake.ReadRows(table, Columns, withGates: false, (row, tally) =>
        {
            row.NeedText(Date, "date");
            var date = row.Date(Date);
            if (date is { } day && (day < settings.From || day > settings.To))
                row.Fault(row.Head.HeadOf(Date), row.Text(Date), $"{DateText.Iso(day)} is outside the season, {DateText.Iso(settings.From)} to {DateText.Iso(settings.To)}", "Correct the date, or \"from\" and \"to\" in season.json.");
            var athlete = squad.Of(row, TrialTable.AthleteId);
            double? minutes = row.Number(Minutes), exertion = row.Number(Exertion), contacts = row.Number(Contacts);
            if (row.Faults.Count > 0) return;
            sessions.Add(new TrainingSession
            {
                AthleteId = athlete!.Id,
                Date = date!.Value,
                Focus = row.Text(Focus),
                Minutes = minutes,
                SessionRpe = exertion,
                JumpContacts = contacts is { } count ? (int)count : null,
            });
            tally.CountKept();
        });
}

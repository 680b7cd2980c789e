using Analytics.Season.Cells;
using Analytics.Season.Checks;
using Analytics.Season.Intake;
using Analytics.Season.Tables;
using Analytics.Season.Trials;

namespace Analytics.Season.Squad;

/// <summary>Reads training sessions.</summary>
internal static class SessionsReader
{
    /// <summary>Reads the rows of a table into sessions.</summary>
    public static void Read(SeasonIntake intake, Table table, SquadList squad, SeasonSettings settings, TestedStrength tested, SessionList sessions)
        => intake.ReadRows(table, SessionColumns.All, withGates: false, (row, tally) =>
        {
            row.NeedText(SessionColumns.Date, "date");
            var date = row.Date(SessionColumns.Date);
            if (date is { } day && (day < settings.From || day > settings.To))
                row.Fault(row.Head.HeadOf(SessionColumns.Date), row.Text(SessionColumns.Date), $"{DateText.Iso(day)} is outside the season, {DateText.Iso(settings.From)} to {DateText.Iso(settings.To)}", "Correct the date, or \"from\" and \"to\" in season.json.");
            var athlete = squad.Of(row, TrialTable.AthleteId);
            var said = SessionRow.Read(row);
            var isChecked = row.Word(TrialTable.Checked, Words.YesNo) ?? false;
            if (row.Faults.Count > 0) return;
            if (!isChecked && said.Exercise is { } done && tested.Fault(athlete!.Id, done, SessionColumns.Load, new ReadTable(tally, row.Head)) is { } fault)
            {
                row.Fault(fault.Column, fault.Value, fault.Reason, fault.Remedy);
                return;
            }

            sessions.Add(row, table, athlete!, date!.Value, said);
            if (row.Faults.Count is 0) tally.CountKept();
        });
}

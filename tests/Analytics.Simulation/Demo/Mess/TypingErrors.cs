using System.Globalization;
using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Mess;

/// <summary>Puts ten known slips into the sheets, each in the row of another athlete.</summary>
public sealed class TypingErrors(ulong seed, IReadOnlyList<TestingDay> days)
{
    private const double KilogramsPerPound = 0.45359237;

    private readonly List<TypingError> _made = [];

    public IReadOnlyList<TypingError> Make()
    {
        // 86.2 typed from a scale set to kilograms.
        Slip("kilograms as pounds", SeasonCalendar.June, "body", "mass_lb",
            (_, cell) => Number(cell) is > 170 and < 215, cell => Sheet.Fixed(Number(cell) * KilogramsPerPound, 1));
        // 17.2 for 1.72.
        Slip("decimal point slipped", SeasonCalendar.June, "sprints", "t_10yd_s",
            (_, cell) => cell.Length > 0, cell => Sheet.Fixed(Number(cell) * 10, 1));
        // 0.571 in a column of milliseconds.
        Slip("seconds as milliseconds", SeasonCalendar.April, "jumps", "flight_ms",
            (row, _) => row[1] == "countermovement", cell => Sheet.Fixed(Number(cell) / 1000, 3));
        // No athlete has this number.
        Slip("unknown athlete", SeasonCalendar.Baseline, "lifts", "athlete_id", (row, _) => row[4] == "1", _ => "TC91");
        // The third jump entered as the second again.
        Slip("attempt entered twice", SeasonCalendar.June, "jumps", "attempt",
            (row, cell) => row[1] == "countermovement" && cell == "3", _ => "2");
        // 2.71 for 4.71: forty yards sooner than twenty.
        Slip("split runs backwards", SeasonCalendar.Baseline, "sprints", "t_40yd_s",
            (row, cell) => cell.Length > 0 && Number(cell) - 2 < Number(row[6]), cell => Sheet.Fixed(Number(cell) - 2, 2));
        // 62.5 in for 26.5 in.
        Slip("impossible jump", SeasonCalendar.March, "jumps", "height_in",
            (_, cell) => cell.Length == 4 && Number(cell) < 39 && cell[1] is >= '5' and <= '9', cell => $"{cell[1]}{cell[0]}{cell[2..]}");
        // 3l5 for 315.
        Slip("letter in a number", SeasonCalendar.June, "lifts", "load_lb",
            (_, cell) => cell.AsSpan(1).Contains('0'), cell => string.Concat(cell.AsSpan(0, 1), cell[1..].Replace('0', 'O')));
        // 1423 for 14.23.
        Slip("decimal point left out", SeasonCalendar.June, "throws", "distance_m",
            (_, cell) => cell.Length > 0, cell => cell.Replace(".", "", StringComparison.Ordinal));
        // The rate at which a clip plays, not the one at which it was recorded; a clip with time stamps has no rate in its row.
        if (days[SeasonCalendar.June].Clips.Count > 0)
            Slip("rate at which the clip plays", SeasonCalendar.June, "contact", "rate_hz", (row, cell) => cell == "240" && row[2].Length == 0, _ => "30");
        return _made;
    }

    private void Slip(string kind, int day, string sheetName, string columnName, Func<string[], string, bool> fits, Func<string, string> spoil)
    {
        var sheet = days[day].Sheet(sheetName);
        var column = sheet.Column(columnName);
        var candidates = new List<int>();
        for (var i = 0; i < sheet.Rows.Count; i++)
        {
            var row = sheet.Rows[i];
            if (fits(row, row[column]) && !_made.Exists(e => e.AthleteId == row[0])) candidates.Add(i);
        }

        if (candidates.Count == 0) throw new InvalidOperationException($"No row of {sheetName} on day {day} can take '{kind}'.");
        var chosen = candidates[RandomNumbers.For(seed, kind).Below(candidates.Count)];
        var cells = sheet.Rows[chosen];
        var athlete = cells[0];
        var meant = cells[column];
        cells[column] = spoil(meant);
        _made.Add(new TypingError(kind, days[day].PathOf(sheetName), chosen + 2, columnName, athlete,
            days[day].Cell(cells[column]), days[day].Cell(meant)));
    }

    private static double Number(string cell) => cell.Length == 0 ? double.NaN : double.Parse(cell, CultureInfo.InvariantCulture);
}

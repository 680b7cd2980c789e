namespace Analytics.Notebooks.TrainingWeek;

/// <summary>How small a sheet must be set so that it stays on one page: estimated from its lines, in tenths of the usual size.</summary>
internal static class SheetSize
{
    // Room of a landscape A4 page, the shorter of the two papers, in points; and what lines of the print style take.
    private const double Page = 520, Title = 34, Head = 50, Line = 14.5, SmallLine = 12, Row = 36, Gap = 6;
    private const int NameChars = 38, SmallChars = 46, OwnChars = 30, WideChars = 165, Columns = 3;

    public static int Tenths(WeekContext week, SessionSheet sheet, string cautions)
    {
        var needed = Title + Foot(week, sheet, cautions);
        needed += sheet.Items.Chunk(Columns).Sum(row => Gap + row.Max(i => Exercise(week, sheet, i)));
        if (sheet.Players.Count > 0) needed += Head + sheet.Players.Sum(p => sheet.OwnOf(p.Id) is { } own ? Math.Max(Row, Gap + Line * Lines($"{own.Item.Exercise.Name} 100 lb {SessionSheet.Why(p, own.Own!)}", OwnChars)) : Row);
        // Smaller type also breaks fewer lines, which makes up for the rounding.
        return Math.Clamp((int)Math.Floor(10 * Page / needed), 5, 10);
    }

    private static double Exercise(WeekContext week, SessionSheet sheet, SheetItem item)
        => Line * Lines($"{item.Item.Exercise.Name} {WeekWords.Sets(item.Item)} {WeekWords.Effort(item.Item)} own work", NameChars)
            + SmallLine * Lines(string.Join("; ", [WeekWords.Way(item.Item), .. sheet.Common(week, item)]), SmallChars);

    private static double Foot(WeekContext week, SessionSheet sheet, string cautions)
    {
        var marks = new SheetMarks();
        foreach (var player in sheet.Players)
            foreach (var item in sheet.Items.Where(i => i.Own is null || sheet.OwnOf(player.Id) == i)) marks.Of(week.Load(player.Id, item.Item, sheet.First.Slot.Date), sheet.Common(week, item));
        var lines = sheet.Apart.Sum(u => Lines($"{week.Player(u.Players[0]).Name}, apart, as licensed staff have listed: {ApartLine.Of(week, u, marks)}", WideChars));
        return Gap * 3 + SmallLine * (lines + Lines(marks.Text, WideChars) + Lines(cautions, WideChars));
    }

    private static int Lines(string text, int chars) => (text.Length + chars - 1) / chars;
}

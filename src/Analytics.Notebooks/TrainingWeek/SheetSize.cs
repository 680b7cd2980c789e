namespace Analytics.Notebooks.TrainingWeek;

/// <summary>How small a sheet must be set so that it stays on one page: estimated from its lines, in per cent of the usual size. The print style has a class for each.</summary>
internal static class SheetSize
{
    // Across, A4 is 544 points high inside its margins and Letter 561 but narrower; a little is kept back for what the estimates miss. And what lines of the print style take.
    private const double Page = 515, Title = 34, Head = 42, Line = 14.5, SmallLine = 12, Gap = 6;
    private const int NameChars = 36, SmallChars = 44, OwnChars = 33, WideChars = 155, Columns = 3;

    // Warm-up sets take a line of their own where there is no room beside the load.
    private const double TallRow = 36, FlatRow = 29;
    private const double Width = 730, OwnShare = 0.27, NameWidth = 125, LoadChar = 8.2, RampChar = 5.6, CellGap = 16;

    /// <summary>100, 95, ... 50.</summary>
    public static int Percent(WeekContext week, SessionSheet sheet, string cautions)
        => Enumerable.Range(0, 11).Select(step => 100 - 5 * step).FirstOrDefault(percent => new Estimate(week, sheet, percent / 100.0).Points(cautions) * percent / 100 <= Page, 50);

    private sealed record Estimate(WeekContext Week, SessionSheet Sheet, double Scale)
    {
        public double Points(string cautions)
        {
            var points = Title + Foot(cautions) + Sheet.Items.Chunk(Columns).Sum(row => Gap + row.Max(Exercise));
            return Sheet.Players.Count == 0 ? points : points + Head + Sheet.Players.Sum(Player);
        }

        private double Player(Planning.People.PlanPlayer player)
        {
            var marks = new SheetMarks();
            var column = (Width / Scale * (1 - OwnShare) - NameWidth) / Math.Max(1, Sheet.Shared.Count);
            bool IsTall(SheetItem item)
            {
                var load = LoadText.Of(Week, Week.Load(player.Id, item.Item, Sheet.First.Slot.Date), marks, Sheet.Common(Week, item));
                return LoadChar * (load.Main.Length + load.Marks.Length / 2.0) + RampChar * load.Ramp.Length + CellGap > column;
            }

            var row = Sheet.Shared.Any(IsTall) ? TallRow : FlatRow;
            if (Sheet.OwnOf(player.Id) is not { } own) return row;
            var mine = LoadText.Of(Week, Week.Load(player.Id, own.Item, Sheet.First.Slot.Date), marks, Sheet.Common(Week, own), withUnit: true);
            return Math.Max(row, Gap + SmallLine + Line * Lines($"{own.Letter} {own.Item.Exercise.Name} {mine.Main} {mine.Marks} {mine.Ramp}", OwnChars));
        }

        private double Exercise(SheetItem item)
            => Line * Lines($"{item.Item.Exercise.Name} {WeekWords.Sets(item.Item)} {WeekWords.Effort(item.Item)}{(item.Own is null ? "" : " own work")}", NameChars)
                + SmallLine * Lines(string.Join("; ", [WeekWords.Way(item.Item), .. Sheet.Common(Week, item)]), SmallChars);

        private double Foot(string cautions)
        {
            var marks = new SheetMarks();
            foreach (var player in Sheet.Players)
                foreach (var item in Sheet.Items.Where(i => i.Own is null || Sheet.OwnOf(player.Id) == i)) marks.Of(Week.Load(player.Id, item.Item, Sheet.First.Slot.Date), Sheet.Common(Week, item));
            var lines = Sheet.Apart.Sum(u => Lines($"{Week.Player(u.Players[0]).Name}, apart, what his restrictions leave: {ApartLine.Of(Week, u, marks)}", WideChars));
            return Gap * 3 + SmallLine * (lines + Lines(marks.Text, WideChars) + Lines(cautions, WideChars));
        }

        private int Lines(string text, int chars) => (int)Math.Ceiling(text.Length * Scale / chars);
    }
}

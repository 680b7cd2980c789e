using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>Where a name stands beside its mark.</summary>
internal enum Side
{
    Right,
    Left,
    Above,
    Below,
}

/// <summary>A name with a place.</summary>
/// <param name="Mark">Index of its mark.</param>
/// <param name="Side">Side of the mark.</param>
/// <param name="Everywhere">False when there is room only in a wide chart.</param>
internal readonly record struct LabelPlace(int Mark, Side Side, bool Everywhere);

/// <summary>
/// Finds places for names beside marks so that none covers another name or a named mark, and as few of the other marks
/// as can be: a named mark without its name is worse than a name over unnamed marks. A name that has free room only in a wide chart is left out of a narrow one.
/// </summary>
internal static class LabelPlaces
{
    private const double Font = 12;
    private const double Wide = 620;
    private const double Narrow = CurvePlot.NarrowestPlot;

    /// <summary>The names that have a place.</summary>
    /// <param name="marks">Place across in percent, place down in pixels, and the name; an empty name only takes room.</param>
    /// <param name="height">Height of the chart in pixels.</param>
    /// <param name="taken">Names that stand already: right end in percent, base line in pixels, and the name.</param>
    public static IEnumerable<LabelPlace> Of(
        IReadOnlyList<(double Percent, double Y, string Name)> marks, double height, IReadOnlyList<(double Right, double Y, string Name)> taken)
    {
        var wide = new Ground(marks, taken, Wide, height);
        var narrow = new Ground(marks, taken, Narrow, height);
        for (var i = 0; i < marks.Count; i++)
        {
            if (marks[i].Name.Length == 0) continue;
            var sides = Enum.GetValues<Side>().Select(s => (Side: s, Covered: wide.Covered(i, s))).Where(s => s.Covered < int.MaxValue).OrderBy(s => s.Covered).ToList();
            if (sides.Count == 0) continue;
            var side = sides[0].Side;
            wide.Take(i, side);
            var everywhere = narrow.Covered(i, side) == 0;
            if (everywhere) narrow.Take(i, side);
            yield return new LabelPlace(i, side, everywhere);
        }
    }

    /// <summary>A chart of one width with the room that is taken.</summary>
    private sealed class Ground(
        IReadOnlyList<(double Percent, double Y, string Name)> marks, IReadOnlyList<(double Right, double Y, string Name)> taken, double width, double height)
    {
        private readonly List<Box> _kept =
        [
            .. marks.Where(m => m.Name.Length > 0).Select(m => Box.About(m.Percent * width / 100, m.Y)),
            .. taken.Select(t => Box.Ending(t.Right * width / 100, t.Y, t.Name)),
        ];

        private readonly List<Box> _others = [.. marks.Where(m => m.Name.Length == 0).Select(m => Box.About(m.Percent * width / 100, m.Y))];

        /// <summary>Unnamed marks a name would stand on; very many where it cannot stand at all.</summary>
        public int Covered(int mark, Side side)
        {
            var place = Place(mark, side);
            return place.Inside(width, height) && !_kept.Any(place.Meets) ? _others.Count(place.Meets) : int.MaxValue;
        }

        public void Take(int mark, Side side) => _kept.Add(Place(mark, side));

        private Box Place(int mark, Side side) => Box.Beside(marks[mark].Percent * width / 100, marks[mark].Y, marks[mark].Name, side);
    }

    private readonly record struct Box(double Left, double Top, double Right, double Bottom)
    {
        public static Box About(double x, double y) => new(x - 5, y - 5, x + 5, y + 5);

        public static Box Beside(double x, double y, string name, Side side)
        {
            var width = TextWidth.Of(name, Font);
            return side switch
            {
                Side.Right => new(x + 7, y - 7, x + 8 + width, y + 7),
                Side.Left => new(x - 8 - width, y - 7, x - 7, y + 7),
                Side.Above => new(x - (width / 2), y - 19, x + (width / 2), y - 6),
                _ => new(x - (width / 2), y + 6, x + (width / 2), y + 19),
            };
        }

        public static Box Ending(double right, double y, string name) => new(right - TextWidth.Of(name, Font), y - 11, right, y + 3);

        public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

        public bool Inside(double width, double height) => Left >= 0 && Right <= width && Top >= 0 && Bottom <= height;
    }
}

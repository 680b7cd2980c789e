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
/// Finds places for names beside marks so that none covers another. A name that has room only in a wide chart is
/// left out of a narrow one.
/// </summary>
internal static class LabelPlaces
{
    private const double Font = 12;
    private const double Wide = 620;
    private const double Narrow = CurvePlot.NarrowestPlot;

    /// <summary>The names that have a place.</summary>
    /// <param name="marks">Place across in percent, place down in pixels, and the name; an empty name only takes room.</param>
    /// <param name="height">Height of the chart in pixels.</param>
    public static IEnumerable<LabelPlace> Of(IReadOnlyList<(double Percent, double Y, string Name)> marks, double height)
    {
        var wide = marks.Select(m => Box.About(m.Percent * Wide / 100, m.Y)).ToList();
        var narrow = marks.Select(m => Box.About(m.Percent * Narrow / 100, m.Y)).ToList();
        for (var i = 0; i < marks.Count; i++)
        {
            if (marks[i].Name.Length == 0) continue;
            foreach (var side in Enum.GetValues<Side>())
            {
                var place = Box.Beside(marks[i].Percent * Wide / 100, marks[i].Y, marks[i].Name, side);
                if (!place.Inside(Wide, height) || wide.Any(place.Meets)) continue;
                wide.Add(place);
                var narrowPlace = Box.Beside(marks[i].Percent * Narrow / 100, marks[i].Y, marks[i].Name, side);
                var everywhere = narrowPlace.Inside(Narrow, height) && !narrow.Any(narrowPlace.Meets);
                if (everywhere) narrow.Add(narrowPlace);
                yield return new LabelPlace(i, side, everywhere);
                break;
            }
        }
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

        public bool Meets(Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

        public bool Inside(double width, double height) => Left >= 0 && Right <= width && Top >= 0 && Bottom <= height;
    }
}

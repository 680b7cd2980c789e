using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.Charts;

/// <summary>A player, or one repetition, as a dot.</summary>
/// <param name="Name">Name shown when pointed at.</param>
/// <param name="Value">Value in the unit of the axis.</param>
public sealed record StripDot(string Name, double Value);

/// <summary>A group as a row of dots.</summary>
/// <param name="Name">Name of the group.</param>
/// <param name="Dots">Its players today.</param>
/// <param name="Middle">Middle of the group today; null when there is none.</param>
/// <param name="MiddleBefore">Middle on the previous testing day; null when there is none.</param>
public sealed record StripGroup(string Name, IReadOnlyList<StripDot> Dots, double? Middle, double? MiddleBefore = null);

/// <summary>Where groups stand in several measures: a small chart for each measure, players as dots.</summary>
public sealed class StripPlot : ReportBlock
{
    private readonly IReadOnlyList<StripPanel> _panels;
    private readonly string? _before;
    private readonly string _day;

    /// <summary>Small charts side by side; below each other in a narrow place.</summary>
    /// <param name="panels">One for each measure; at least one.</param>
    /// <param name="before">Name of the previous testing day for the key; null when no ring is drawn.</param>
    /// <param name="day">Name of the day of the dots for the key, where it is not today.</param>
    public StripPlot(IEnumerable<StripPanel> panels, string? before = null, string day = "today")
    {
        _day = day;
        _panels = [.. panels];
        _before = before;
        if (_panels.Count == 0) throw new ArgumentException("A strip plot needs at least one panel.", nameof(panels));
    }

    /// <inheritdoc/>
    public override void WriteHtml(Markup html)
    {
        html.Raw("<p class=\"key\">").Add(Marks.Key(Marks.Dots(Marks.Dot(50, 0)), "a player")).Add(Marks.Key(Marks.Middle(50, -7, 7), $"middle of the group {_day}"));
        if (_before is not null) html.Add(Marks.Key(Marks.Ring(50, 0), $"middle on {_before}"));
        html.Raw("</p>");
        SmallCharts.Write(html, _panels);
    }

    /// <inheritdoc/>
    public override string ToText() => Join(_panels.Select(p => p.ToText()));
}

using System.Globalization;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.TestingDay;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.Plans;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The sheet of one group in one session: what is done in which order, and what every player puts on. One printed page.</summary>
internal sealed class SessionSheet(WeekContext week, UnitSession session, IReadOnlyList<UnitSession> apart) : ReportBlock
{
    private const string Letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private readonly SheetNotes _notes = new();
    private readonly Dictionary<PlannedItem, IReadOnlyList<string>> _common = new(ReferenceEqualityComparer.Instance);

    /// <summary>The sheets of a plan, by day and group; restricted players stand on the sheet of their group.</summary>
    public static IReadOnlyList<SessionSheet> Of(WeekContext week)
        => [.. week.Sessions.GroupBy(s => (s.Slot, s.Group)).Select(g => new SessionSheet(week, g.FirstOrDefault(s => !s.IsApart) ?? g.First(), [.. g.Where(s => s.IsApart)]))];

    public override void WriteHtml(Markup html)
    {
        html.Add($"<section class=\"shp\"><h3>{OutsideText.Label(session.Group)} <span>{SheetWords.When(session.Slot)}</span></h3>");
        html.Add($"<p class=\"shk\"><b>{SheetWords.Kind(session.Kind)}</b>{Line()}</p>");
        Order(html);
        Own(html);
        Players(html);
        Apart(html);
        Notes(html);
        html.Raw("</section>");
    }

    public override string ToText() => Join([$"{session.Group}, {SheetWords.When(session.Slot)}, {SheetWords.Kind(session.Kind)}{Line()}",
        string.Join('\n', session.Shared.Select((i, n) => $"{Letters[n]} {i.Exercise.Name}, {SheetWords.Sets(i)}, {SheetWords.Way(i)}".TrimEnd(' ', ','))),
        string.Join('\n', Everyone().Select(p => $"{week.Player(p).Name}: {string.Join("; ", session.For(p).Select(i => $"{i.Exercise.Name} {Load(p, i)}".TrimEnd()))}"))]);

    private string Line() => string.Create(CultureInfo.InvariantCulture,
        $", about {session.Minutes:0} of {session.Slot.Minutes} min with warm-up{(session.Slot.Room.Length > 0 ? $", {OutsideText.Label(session.Slot.Room)}" : "")}");

    private IEnumerable<string> Everyone() => session.IsApart ? [] : session.Players;

    private void Order(Markup html)
    {
        if (session.IsApart) return;
        html.Raw("<ol class=\"sho\">");
        for (var i = 0; i < session.Shared.Count; i++)
        {
            var item = session.Shared[i];
            html.Add($"<li><b>{Letters[i].ToString()}</b><span><strong>{OutsideText.Label(item.Exercise.Name)}</strong> {SheetWords.Sets(item)}{(SheetWords.Way(item) is { Length: > 0 } way ? ", " + way : "")}");
            string[] more = [item.IsKept ? "fixed by the coach" : "", item.Exercise.Caution.Length > 0 ? OutsideText.Label(item.Exercise.Caution) : "", .. Common(item).Where(n => !IsPlain(n))];
            if (more.Any(t => t.Length > 0)) html.Add($" <small>{Words.Signs(string.Join("; ", more.Where(t => t.Length > 0)))}</small>");
            html.Raw("</span></li>");
        }

        html.Raw("</ol>");
    }

    // Own work goes on with the letters of the shared part.
    private string LetterOf(OwnWork own) => Letters[session.Shared.Count + session.Own.ToList().IndexOf(own)].ToString();

    private void Players(Markup html)
    {
        var loaded = session.Shared.Select((Item, Index) => (Item, Index)).Where(i => HasLoad(i.Item)).ToList();
        if (session.IsApart) return;
        html.Add($"<table class=\"shl\"><caption>Loads in {week.Bar.Symbol}, warm-up sets under them; bar included, dumbbells one hand</caption><thead><tr><th scope=\"col\">Player</th>");
        foreach (var (item, index) in loaded) html.Add($"<th scope=\"col\">{Letters[index].ToString()} <small>{OutsideText.Label(item.Exercise.Name)}</small></th>");
        if (session.Own.Count > 0) html.Raw("<th scope=\"col\">Own work</th>");
        html.Raw("</tr></thead><tbody>");
        foreach (var id in Everyone())
        {
            html.Add($"<tr><th scope=\"row\">{OutsideText.Label(week.Player(id).Name)}</th>");
            foreach (var (item, index) in loaded) Cell(html, id, item, Letters[index]);
            if (session.Own.Count > 0) OwnCell(html, id);
            html.Raw("</tr>");
        }

        html.Raw("</tbody></table>");
    }

    // What goes for everybody stands once with the exercise, not beside every load.
    private IReadOnlyList<string> Common(PlannedItem item)
    {
        if (_common.TryGetValue(item, out var known)) return known;
        var notes = session.Players.Select(p => week.Loads(p, item, session.Slot.Date)).Where(l => l.Working.Count > 0).Select(l => l.Notes).ToList();
        return _common[item] = notes.Count < 2 ? [] : [.. notes[0].Where(n => notes.TrueForAll(o => o.Contains(n)))];
    }

    // Said once over the table.
    private static bool IsPlain(string note) => note.StartsWith("load of one hand", StringComparison.Ordinal);

    private static bool HasLoad(PlannedItem item) => item.Exercise.Basis.Kind != LoadBasisKind.None || item.Partner?.Basis.Kind == LoadBasisKind.Height;

    private void Cell(Markup html, string id, PlannedItem item, char letter)
    {
        var loads = week.Loads(id, item, session.Slot.Date);
        html.Add($"<td data-l=\"{letter.ToString()}\"><b>{Main(loads)}</b>");
        var marks = _notes.Marks(loads.Instead is { } instead && instead != "test first" ? [instead, .. loads.Notes.Except(Common(item))] : loads.Notes.Except(Common(item)).Where(n => !IsPlain(n)));
        if (marks.Length > 0) html.Add($"<sup>{marks}</sup>");
        if (loads.WarmUp.Count > 0) html.Add($"<small>{SheetWords.WarmUp(loads, week.Bar)}</small>");
        html.Raw("</td>");
    }

    private string Main(Prescription loads)
    {
        var parts = new[] { SheetWords.Working(loads, week.Bar), loads.Height is { } height ? SheetWords.Height(height, week.Season.Settings.JumpUnit) : "" }.Where(t => t.Length > 0).ToList();
        return parts.Count > 0 ? string.Join(", ", parts) : loads.Instead is null ? "" : loads.Instead.StartsWith("test first", StringComparison.Ordinal) ? "test first" : "by feel";
    }

    private string Load(string id, PlannedItem item) => HasLoad(item) ? Main(week.Loads(id, item, session.Slot.Date)) : "";

    private void OwnCell(Markup html, string id)
    {
        var own = session.Own.FirstOrDefault(o => o.ForNeed.Contains(id) || o.ByDefault.Contains(id));
        if (own is null)
        {
            html.Raw("<td></td>");
            return;
        }

        html.Add($"<td class=\"shw\"><b>{LetterOf(own)}");
        if (HasLoad(own.Item))
        {
            var loads = week.Loads(id, own.Item, session.Slot.Date);
            html.Add($" {Main(loads)}");
            if (_notes.Marks(loads.Notes.Except(Common(own.Item)).Where(n => !IsPlain(n))) is { Length: > 0 } marks) html.Add($"<sup>{marks}</sup>");
        }

        html.Raw("</b>");
        html.Add($"<small>{(own.ForNeed.Contains(id) ? $"need: {own.Quality.Name()}" : "group default")}</small></td>");
    }

    private void Own(Markup html)
    {
        if (session.Own.Count == 0 || session.IsApart) return;
        html.Raw("<p class=\"shx\"><b>Own work</b> ");
        html.Add($"{string.Join("; ", session.Own.Select(o => $"{LetterOf(o)} {OutsideText.Label(o.Item.Exercise.Name)} {SheetWords.Sets(o.Item)}, {SheetWords.Way(o.Item)}{After(o)}"))}.</p>");
    }

    // Own work of a fresh quality comes before heavier shared work.
    private string After(OwnWork own)
    {
        var before = session.Shared.TakeWhile(i => i.Exercise.Quality.PartOfSession() <= own.Quality.PartOfSession()).Count();
        return before == session.Shared.Count || before == 0 ? before == 0 ? " (first)" : "" : $" (after {Letters[before - 1]})";
    }

    private void Apart(Markup html)
    {
        foreach (var unit in apart)
        {
            var id = unit.Players[0];
            var items = unit.For(id);
            html.Add($"<p class=\"shx\"><b>{OutsideText.Label(week.Player(id).Name)}</b>, restricted: ");
            html.Add($"{(items.Count == 0 ? "nothing in this session" : string.Join("; ", items.Select(i => $"{OutsideText.Label(i.Exercise.Name)} {SheetWords.Sets(i)}{(HasLoad(i) && Main(week.Loads(id, i, unit.Slot.Date)) is { Length: > 0 } load ? $" at {load}" : "")}")))}.</p>");
        }
    }

    private void Notes(Markup html)
    {
        html.Raw("<p class=\"shn\">");
        foreach (var (mark, text) in _notes.All) html.Add($"<span><sup>{mark}</sup> {Words.Signs(text)}</span> ");
        html.Raw("Stop on pain, dizziness or lost technique; spotters at bench and squat, none at cleans. Local rules and licensed staff come first.</p>");
    }
}

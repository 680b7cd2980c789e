using Analytics.Season.Cells;
using Analytics.Season.Squad;

namespace Analytics.Season.Joining;

/// <summary>
/// The athletes of joined seasons, one for each athlete_id whatever its case. Name, position, group and stature are those of the latest season he is in. Athletes who are not in the latest season
/// stay: a trend over those who are still there only would be a trend of those worth keeping.
/// </summary>
internal sealed class JoinedSquad
{
    private readonly Dictionary<string, string> ids = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<InputNote> notes = [];
    private readonly string list;

    /// <summary>Joins the athletes.</summary>
    public JoinedSquad(IReadOnlyList<SeasonPart> parts)
    {
        list = parts[^1].Data.Files.FirstOrDefault(f => f.Path.StartsWith("athletes.", StringComparison.OrdinalIgnoreCase))?.Path ?? "athletes.csv";
        var spells = parts.SelectMany((p, i) => p.Data.Athletes.Select(a => (Athlete: a, Part: p, Number: i)))
            .GroupBy(a => a.Athlete.Id, StringComparer.OrdinalIgnoreCase).OrderBy(a => a.Last().Athlete.Id, StringComparer.Ordinal);
        foreach (var athlete in spells)
            foreach (var spelling in athlete) ids[spelling.Athlete.Id] = athlete.Last().Athlete.Id;
        Athletes = [.. spells.Select(a => Join([.. a.Select(s => (s.Athlete, s.Part))]))];
        var gone = Athletes.Count(a => !a.InLatestSeason);
        if (gone > 0) notes.Add(new InputNote(list, $"{gone} athlete{(gone is 1 ? "" : "s")} of earlier seasons {(gone is 1 ? "is" : "are")} not in this list; their results stay."));
    }

    /// <summary>The athletes, by identifier.</summary>
    public IReadOnlyList<Athlete> Athletes { get; }

    /// <summary>Remarks on athletes who differ from season to season.</summary>
    public IReadOnlyList<InputNote> Notes => notes;

    /// <summary>The identifier as the latest season writes it.</summary>
    public string IdOf(string id) => ids[id];

    private Athlete Join(IReadOnlyList<(Athlete Athlete, SeasonPart Part)> spells)
    {
        var (athlete, part) = spells[^1];
        foreach (var (before, season) in spells.SkipLast(1).Reverse()) Compare(athlete, before, season.Name, part.IsLatest ? "now" : $"in {CellText.Show(part.Name)}");
        return athlete with
        {
            BirthYear = spells.Select(s => s.Athlete.BirthYear).LastOrDefault(y => y is not null),
            InLatestSeason = part.IsLatest,
            Absences = [.. spells.SelectMany(s => s.Athlete.Absences.Select(a => End(a, s.Athlete, s.Part))).OrderBy(a => a.From)],
        };
    }

    /// <summary>A spell without an end lasts to the end of its season at most: the next has an availability list of its own.</summary>
    private Absence End(Absence spell, Athlete athlete, SeasonPart part)
    {
        if (spell.To is not null || part.IsLatest) return spell;
        var to = spell.From > part.Data.Settings.To ? spell.From : part.Data.Settings.To;
        notes.Add(new InputNote(part.Path("availability.csv"), $"{CellMarks.Athlete(athlete)} is {spell.Status} {AvailabilityReader.Days(spell)} without an end; taken to last to {DateText.Iso(to)}, the end of {CellText.Show(part.Name)}."));
        return spell with { To = to };
    }

    private void Compare(Athlete athlete, Athlete before, string season, string now)
    {
        var then = $"in {CellText.Show(season)}";
        if (!string.Equals(athlete.Name, before.Name, StringComparison.OrdinalIgnoreCase))
            Note($"{CellMarks.Person(athlete.Id)} is {CellMarks.Person(athlete.Name)} {now} and was {CellMarks.Person(before.Name)} {then}; taken for one person. Check that it is the same person; if not, give one of the two an identifier of his own.");
        if (athlete.BirthYear is { } year && before.BirthYear is { } other && year != other)
            Note(FormattableString.Invariant($"{CellMarks.Athlete(athlete)} is born in {year} {now} and in {other} {then}; taken for one person. Check that it is the same person."));
        if (!string.Equals(athlete.Group, before.Group, StringComparison.OrdinalIgnoreCase))
            Note($"{CellMarks.Athlete(athlete)} is in the group {CellText.Show(athlete.Group)} {now} and was in {CellText.Show(before.Group)} {then}; all his results count for {CellText.Show(athlete.Group)}.");
    }

    private void Note(string text) => notes.Add(new InputNote(list, text));
}

using System.Collections.Concurrent;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Squad;

/// <summary>The athletes by identifier, whatever its case.</summary>
internal sealed class SquadList
{
    private readonly Dictionary<string, Athlete> byId = new(StringComparer.OrdinalIgnoreCase);
    private readonly ConcurrentDictionary<string, string> remedies = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The athletes, by identifier.</summary>
    public IEnumerable<Athlete> All => byId.Values.OrderBy(a => a.Id, StringComparer.Ordinal);

    public int Count => byId.Count;

    /// <summary>The athlete; null when not known.</summary>
    public Athlete? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>Adds an athlete, or replaces the one with this identifier.</summary>
    public void Set(Athlete athlete) => byId[athlete.Id] = athlete;

    /// <summary>The athlete a row names; null, with a fault in the row, when there is none.</summary>
    public Athlete? Of(RowCells row, Column column)
    {
        var id = row.Text(column);
        if ((Find(id) ?? Find(SheetCell.Read(id))) is { } athlete)
        {
            row.About = athlete.Id;
            return athlete;
        }

        if (id.Length is 0) row.Fault(row.Head.HeadOf(column), "", "there is no athlete_id", "Fill in the athlete_id.");
        else row.Fault(row.Head.HeadOf(column), id, $"athlete '{CellMarks.Person(id)}' is not in athletes.csv", Remedy(id));
        return null;
    }

    /// <summary>What to do about an identifier that is not known.</summary>
    public string Remedy(string id)
    {
        if (remedies.TryGetValue(id, out var known)) return known;
        var named = All.Where(a => string.Equals(a.Name, id, StringComparison.OrdinalIgnoreCase)).Select(a => a.Id).ToList();
        var near = named.Count > 0 ? named : NearWord.AllOf(id, All.Select(a => a.Id));
        // Many equally near identifiers are no hint.
        var remedy = near.Count is 0 or > 3
            ? "Add the athlete to athletes.csv, or correct the identifier."
            : $"Did you mean {string.Join(" or ", near.Select(n => CellMarks.Athlete(Find(n)!)))}? Otherwise add the athlete to athletes.csv.";
        if (remedies.Count < 1000) remedies[id] = remedy;
        return remedy;
    }
}

using Analytics.Metrics.Load;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Tables;

namespace Analytics.Season.Squad;

/// <summary>
/// Puts the rows of sessions together: rows of one athlete, day and focus are one session, whose minutes, rating and contacts are counted once, however often they are written.
/// </summary>
internal sealed class SessionList
{
    private readonly Dictionary<(string Athlete, DateOnly Date, string Focus), Entry> byKey = [];
    private readonly List<Entry> entries = [];

    /// <summary>The sessions, in the order of their first rows.</summary>
    public List<TrainingSession> Make() => [.. entries.Select(e => e.Make())];

    /// <summary>Adds a row without fault; a fault in it says why it cannot be added.</summary>
    public void Add(RowCells row, Table table, Athlete athlete, DateOnly date, SessionRow said)
    {
        var focus = row.Text(SessionColumns.Focus);
        var key = (athlete.Id, date, Words.Normal(focus));
        if (!byKey.TryGetValue(key, out var entry))
        {
            byKey[key] = entry = new Entry(athlete.Id, date, focus, new Place(table.Path, row.Line));
            entries.Add(entry);
        }
        else if (Contradicts(row, table, entry, said))
        {
            return;
        }
        else if (said.Exercise is null && !entry.Learns(said))
        {
            row.Fault("", "", $"the row adds nothing to the session in {entry.First.In(table)}", "Delete one of the two rows. If there were two sessions, give the second another focus, such as power 2.");
            return;
        }

        entry.Take(said, new Place(table.Path, row.Line));
    }

    private static bool Contradicts(RowCells row, Table table, Entry entry, SessionRow said)
    {
        var before = row.Faults.Count;
        Compare(SessionColumns.Minutes, had => $"{had} minutes", entry.Minutes, said.Minutes);
        Compare(SessionColumns.Exertion, had => $"a rating of {had}", entry.Exertion, said.Exertion);
        Compare(SessionColumns.Contacts, had => $"{had} jump contacts", entry.Contacts, said.Contacts);
        return row.Faults.Count > before;

        void Compare(NumberColumn column, Func<string, string> words, Known? known, double? now)
        {
            if (known is not { } had || now is not { } value || had.Value.Equals(value)) return;
            row.Fault(row.Head.HeadOf(column), row.Text(column), $"the same session has {words(CellText.Number(had.Value))} in {had.Place.In(table)}, here {CellText.Number(value)}; one athlete, day and focus are one session",
                "Write the figure of the whole session once. If there were two sessions, give the second another focus, such as power 2.");
        }
    }

    /// <summary>Where a row stands.</summary>
    private readonly record struct Place(string Path, int Line)
    {
        public string In(Table table) => Path == table.Path ? $"line {Line}" : $"{Path} line {Line}";
    }

    private readonly record struct Known(double Value, Place Place);

    private sealed class Entry(string athlete, DateOnly date, string focus, Place first)
    {
        private List<ExerciseSets>? exercises;

        public Place First { get; } = first;

        public Known? Minutes { get; private set; }

        public Known? Exertion { get; private set; }

        public Known? Contacts { get; private set; }

        /// <summary>Whether a row that contradicts nothing says something of the session that is not known yet.</summary>
        public bool Learns(SessionRow said)
            => (Minutes is null && said.Minutes is not null) || (Exertion is null && said.Exertion is not null) || (Contacts is null && said.Contacts is not null);

        public void Take(SessionRow said, Place place)
        {
            Minutes ??= Of(said.Minutes, place);
            Exertion ??= Of(said.Exertion, place);
            Contacts ??= Of(said.Contacts, place);
            if (said.Exercise is { } exercise) (exercises ??= []).Add(exercise);
        }

        public TrainingSession Make() => new()
        {
            AthleteId = athlete,
            Date = date,
            Focus = focus,
            Minutes = Minutes?.Value,
            SessionRpe = Exertion?.Value,
            JumpContacts = (int?)Contacts?.Value,
            Exercises = exercises ?? (IReadOnlyList<ExerciseSets>)[],
        };

        private static Known? Of(double? value, Place place) => value is { } v ? new Known(v, place) : null;
    }
}

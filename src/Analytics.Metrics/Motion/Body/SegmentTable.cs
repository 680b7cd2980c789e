namespace Analytics.Metrics.Motion;

/// <summary>
/// A published table of segment masses and centres of mass, and the ways it can cover a body with the landmarks of a clip. The tables describe groups (Dempster: eight elderly men's bodies;
/// de Leva: young adults, 100 men and 15 women); what one heavy player's body departs from them is not in any error here.
/// </summary>
public sealed class SegmentTable
{
    private readonly BodyPart body;

    internal SegmentTable(string name, string sourceKey, IReadOnlyList<SegmentRow> rows, Func<SegmentTable, BodyPart> body)
    {
        (Name, SourceKey, Rows) = (name, sourceKey, rows);
        this.body = body(this);
        WholeBody = this.body.Of(Enum.GetValues<MarkerRole>().ToHashSet()).Mass;
    }

    /// <summary>Dempster's table as given by Winter [dempster1955; winter2009].</summary>
    public static SegmentTable Dempster { get; } = DempsterTable.Make();

    /// <summary>De Leva's table, men [deleva1996].</summary>
    public static SegmentTable DeLevaMale { get; } = DeLevaTable.Make(female: false);

    /// <summary>De Leva's table, women [deleva1996].</summary>
    public static SegmentTable DeLevaFemale { get; } = DeLevaTable.Make(female: true);

    /// <summary>Name in words.</summary>
    public string Name { get; }

    /// <summary>Key of the source in the list of references.</summary>
    public string SourceKey { get; }

    /// <summary>All rows, as printed.</summary>
    public IReadOnlyList<SegmentRow> Rows { get; }

    /// <summary>Sum of the mass fractions of a whole body: 1, or 0.9999 for de Leva's women by rounding in print.</summary>
    public double WholeBody { get; }

    /// <summary>A row by name.</summary>
    /// <exception cref="KeyNotFoundException">No such segment; those there get listed.</exception>
    public SegmentRow this[string name] => Rows.FirstOrDefault(r => r.Name == name)
        ?? throw new KeyNotFoundException($"{Name} has no segment '{name}'; it has: {string.Join(", ", Rows.Select(r => r.Name))}.");

    internal BodyPart.Cover Cover(IReadOnlySet<MarkerRole> available) => body.Of(available);
}

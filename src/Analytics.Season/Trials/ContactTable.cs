using Analytics.Metrics.Contact;
using Analytics.Metrics.Motion;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Clips;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>contact.csv</c>: one reading of one repetition on film a row.</summary>
internal sealed class ContactTable : TrialTable
{
    public static readonly NumberColumn Reading = new("reading", 1, 100, whole: true);

    public static readonly Column Clip = new("clip", needed: true);

    public static readonly NumberColumn Rate = new("rate_hz", RateLimits.Lowest, RateLimits.Highest);

    public static readonly NumberColumn FirstFrame = new("first_movement_frame", 0, 1_000_000, whole: true, needed: true);

    public static readonly NumberColumn ContactFrame = new("contact_frame", 0, 1_000_000, whole: true, needed: true);

    public static readonly NumberColumn FirstRow = new("first_movement_row", 0, 20_000);

    public static readonly NumberColumn ContactAtRow = new("contact_row", 0, 20_000);

    // Limits outside which a gap is a slip; common practice, no source.
    public static readonly QuantityColumn Gap = new("gap", UnitSets.Gaps, 0.2, 40);

    public static readonly Column Against = new("against");

    public static readonly Column Travel = new("travel");

    private static readonly WordSet<Travel> Ways = new("direction of travel", ("right", Metrics.Motion.Travel.Right), ("left", Metrics.Motion.Travel.Left));

    public override string Name => "contact";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Attempt, Reading, Clip, Rate, FirstFrame, ContactFrame, FirstRow, ContactAtRow, Gap, Against, Travel, StepWords.Column];

    // A row is a reading of film: who took the test and who read the film are two people.
    public override bool HasTester => false;

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        var clip = ClipName(row);
        var before = row.Faults.Count;
        int first = row.NeedWhole(FirstFrame, "frame of first movement"), contact = row.NeedWhole(ContactFrame, "frame of contact");
        if (row.Faults.Count == before && contact <= first)
            row.Fault(row.Head.HeadOf(ContactFrame), row.Text(ContactFrame), contact == first ? $"contact and first movement are both at frame {contact}" : $"contact at frame {contact} comes before first movement at frame {first}", "Check whether the two frames were swapped, or read them again.");
        double? firstRow = PictureRow(row, FirstRow, place.Settings.Video), contactRow = PictureRow(row, ContactAtRow, place.Settings.Video);
        var gap = row.Quantity(Gap);
        var trial = new ContactRow
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = (int)(row.Number(Attempt) ?? 0),
            Clip = clip,
            Reading = row.Number(Reading) is { } reading ? (int)reading : null,
            RateHertz = row.Number(Rate),
            FirstMovement = new EventReading(first, firstRow),
            Contact = new EventReading(contact, contactRow),
            Gap = gap is { } metres ? Length.FromMetres(metres) : null,
            Against = Party(row, place),
            Travel = row.Word(Travel, Ways),
            Steps = StepWords.Read(row),
        };
        return row.Faults.Count > 0 ? null : trial;
    }

    private static string ClipName(RowCells row)
    {
        var name = row.NeedText(Clip, "clip");
        if (name.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)) name = name[..^4];
        if (name.Length > CellText.LongestShown || name.StartsWith('.') || name.Any(c => char.IsControl(c) || c is '/' or '\\' or ':'))
            row.Fault(row.Head.HeadOf(Clip), name, $"'{CellText.Show(name)}' is no name of a clip: it is too long, or holds slashes, colons, line breaks or a point at its beginning", "Write the name alone, such as p001-1 for the file clips/p001-1.csv.");
        return name;
    }

    private static double? PictureRow(RowCells row, NumberColumn column, VideoSettings video)
    {
        if (row.Number(column) is not { } at || video.PictureHeightPixels is not { } height || at <= height) return row.Number(column);
        row.Fault(row.Head.HeadOf(column), row.Text(column), $"row {CellText.Number(at)} lies below the picture, which is {CellText.Number(height)} px high", "Count rows from the top of the picture, or correct video.picture_height_px in season.json.");
        return null;
    }

    private static ContactParty Party(RowCells row, in TrialPlace place)
    {
        var text = row.Text(Against);
        if (text.Length is 0) return ContactParty.NotNoted;
        if (string.Equals(text, "bag", StringComparison.OrdinalIgnoreCase)) return ContactParty.Bag;
        if (place.Squad.Find(text) is not { } other)
        {
            row.Fault(row.Head.HeadOf(Against), text, $"'{CellMarks.Person(text)}' is neither bag nor an athlete of athletes.csv", $"{place.Squad.Remedy(text)} Or write bag, or leave the cell empty.");
            return ContactParty.NotNoted;
        }

        if (other.Id == place.AthleteId) row.Fault(row.Head.HeadOf(Against), text, $"athlete '{CellMarks.Person(other.Id)}' ran into himself", "Write the other athlete, bag, or nothing.");
        return ContactParty.Athlete(other.Id);
    }
}

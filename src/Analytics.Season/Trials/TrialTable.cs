using Analytics.Metrics.Trials;
using Analytics.Season.Columns;
using Analytics.Season.Squad;

namespace Analytics.Season.Trials;

/// <summary>A kind of table of a testing day: its columns, and how a row becomes a trial.</summary>
internal abstract class TrialTable
{
    /// <summary>Who the row is about.</summary>
    public static readonly Column AthleteId = new("athlete_id", needed: true);

    /// <summary>Number of the attempt; rows without are numbered as they stand.</summary>
    public static readonly NumberColumn Attempt = new("attempt", 1, 1000, whole: true);

    /// <summary>"yes" when the coach has looked at an unlikely value and stands by it.</summary>
    public static readonly Column Checked = new("checked");

    /// <summary>Who took the test; a table has it where <see cref="HasTester"/>.</summary>
    public static readonly Column Tester = new("tester");

    /// <summary>Longest <see cref="Tester"/> taken, in characters: initials or a name, not a remark.</summary>
    public const int LongestTester = 40;

    /// <summary>Name of the file without ending, or of the sheet.</summary>
    public abstract string Name { get; }

    /// <summary>The columns it may have, but for <see cref="Checked"/>, which every table may have, and <see cref="Tester"/>.</summary>
    public abstract IReadOnlyList<Column> Columns { get; }

    /// <summary>Whether it may have timing-gate columns.</summary>
    public virtual bool HasGates => false;

    /// <summary>Whether it may have the column <see cref="Tester"/>.</summary>
    public virtual bool HasTester => true;

    /// <summary>Makes the trial; its result is used only when the row has no fault.</summary>
    /// <param name="row">The row.</param>
    /// <param name="place">Whose it is, when and where.</param>
    public abstract Trial? Read(RowCells row, in TrialPlace place);

    /// <summary>Every table a testing day may have, in reading order.</summary>
    public static IReadOnlyList<TrialTable> All { get; } =
        [new BodyTable(), new LiftsTable(), new JumpsTable(), new SprintsTable(), new AgilityTable(), new ThrowsTable(), new StairsTable(), new ContactTable()];
}

/// <summary>Whose trial a row is, when and where.</summary>
/// <param name="AthleteId">Identifier as in the athlete list.</param>
/// <param name="Date">The day.</param>
/// <param name="Source">Place in the input.</param>
/// <param name="Settings">Settings of the season.</param>
/// <param name="Numbers">Numbers attempts that have none.</param>
/// <param name="Squad">The athletes, for a row that names another.</param>
internal readonly record struct TrialPlace(string AthleteId, DateOnly Date, TrialSource Source, SeasonSettings Settings, AttemptNumbers Numbers, SquadList Squad);

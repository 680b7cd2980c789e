using Analytics.Metrics.Trials;
using Analytics.Planning;
using Analytics.Season.Training;

namespace Analytics.Season;

/// <summary>A season as read: what was kept, what was held back, and from which files.</summary>
public sealed record SeasonData
{
    /// <summary>Settings of the season.</summary>
    public required SeasonSettings Settings { get; init; }

    /// <summary>The athletes, by identifier.</summary>
    public required IReadOnlyList<Athlete> Athletes { get; init; }

    /// <summary>The testing days, by date.</summary>
    public required IReadOnlyList<TestingDay> Days { get; init; }

    /// <summary>Training sessions of sessions.csv, in the order of their first rows, season by season; empty when there is no such file.</summary>
    public IReadOnlyList<TrainingSession> Sessions { get; init; } = [];

    /// <summary>What the folder <c>training</c> says; what it does not say comes from the files shipped with the kit, so it is always whole. Of joined seasons that of the latest.</summary>
    public TrainingSettings Training { get; init; } = ShippedTraining.In("lb");

    /// <summary>
    /// What failed a check, in file order. Nothing read is dropped without a line here. One entry may stand for many rows
    /// (a table whose head is wrong) or for none (a file that could not be opened, a cell left out of a row that was kept):
    /// count rows with <see cref="RowsHeldBack"/>.
    /// </summary>
    public required IReadOnlyList<HeldBackRow> HeldBack { get; init; }

    /// <summary>Things worth saying that held nothing back, such as an unknown column.</summary>
    public required IReadOnlyList<InputNote> Notes { get; init; }

    /// <summary>Earlier seasons joined to this one, oldest first; empty when there are none.</summary>
    public IReadOnlyList<SeasonSpan> Earlier { get; init; } = [];

    /// <summary>Every file read.</summary>
    public required IReadOnlyList<InputFile> Files { get; init; }

    /// <summary>Data rows read: always kept + held back.</summary>
    public int RowsRead => Files.Sum(f => f.Rows);

    /// <summary>Data rows kept.</summary>
    public int RowsKept => Files.Sum(f => f.Kept);

    /// <summary>Data rows held back.</summary>
    public int RowsHeldBack => Files.Sum(f => f.HeldBack);
}

/// <summary>A row that failed a check.</summary>
/// <param name="File">Path inside the season folder, forward slashes; sheet after '#' for a workbook. Files of an earlier season begin with its name.</param>
/// <param name="Line">Line or sheet row, from 1; 0 when the whole file is at fault, or where lines are not shown.</param>
/// <param name="Column">Column head; empty when the whole row is at fault.</param>
/// <param name="Value">The cell as read, shortened if very long.</param>
/// <param name="Reason">What is wrong and what is allowed.</param>
/// <param name="Remedy">What would mend it.</param>
/// <param name="AthleteId">The athlete, where the row names a known one.</param>
/// <param name="Rows">Data rows this entry stands for: 1 for a row, more for a whole table, 0 for a file that could not be opened or for a cell left out of a row that was kept.</param>
public sealed record HeldBackRow(string File, int Line, string Column, string Value, string Reason, string Remedy, string? AthleteId = null, int Rows = 1);

/// <summary>A remark about the input.</summary>
/// <param name="File">Path inside the season folder.</param>
/// <param name="Text">The remark.</param>
public sealed record InputNote(string File, string Text);

/// <summary>A file that was read.</summary>
/// <param name="Path">Path inside the season folder, forward slashes; sheet after '#' for a workbook.</param>
/// <param name="Sha256">SHA-256 of its bytes, lower-case hex; empty when it could not be opened.</param>
/// <param name="Rows">Data rows read.</param>
/// <param name="Kept">Data rows kept.</param>
/// <param name="HeldBack">Data rows held back.</param>
public sealed record InputFile(string Path, string Sha256, int Rows, int Kept, int HeldBack);

/// <summary>One testing day.</summary>
public sealed record TestingDay
{
    /// <summary>The date.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>What each athlete did that day, by athlete identifier order of the athlete list.</summary>
    public required IReadOnlyList<AthleteDay> Athletes { get; init; }
}

using Analytics.Season.Files;

namespace Analytics.Season.Intake;

/// <summary>One file of a testing day and what came of reading it, apart from all others.</summary>
internal sealed class TestingFile(FolderEntry entry, DateOnly date, SeasonIntake intake)
{
    public FolderEntry Entry { get; } = entry;

    public DateOnly Date { get; } = date;

    /// <summary>Counts and remarks of this file only.</summary>
    public SeasonIntake Intake { get; } = intake;

    public List<Candidate> Candidates { get; } = [];

    /// <summary>Whether it holds a table of a testing day, so that the day exists.</summary>
    public bool HasTable { get; set; }

    /// <summary>Whether all is said already.</summary>
    public bool IsDone { get; private set; }

    /// <summary>Holds the file back as a whole.</summary>
    public void HoldBack(InputFault fault)
    {
        Intake.Count(Entry.Path).HoldBack(fault, 0);
        IsDone = true;
    }

    /// <summary>Remarks on the file.</summary>
    public void Note(string text)
    {
        Intake.Note(Entry.Path, text);
        IsDone = true;
    }
}

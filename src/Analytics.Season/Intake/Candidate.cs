using Analytics.Metrics.Trials;
using Analytics.Season.Clips;
using Analytics.Season.Columns;

namespace Analytics.Season.Intake;

/// <summary>A table that was read, for checks that look across rows.</summary>
/// <param name="Tally">Its count.</param>
/// <param name="Head">Its head.</param>
internal sealed record ReadTable(FileTally Tally, HeadMap Head);

/// <summary>A trial whose own row is in order; checks across rows may still hold it back.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Table">Where it was read.</param>
/// <param name="IsChecked">Whether the coach has marked the row as checked.</param>
/// <param name="Clip">The clip files its points and times come from; null when there are none.</param>
internal readonly record struct Candidate(Trial Trial, ReadTable Table, bool IsChecked = false, ClipFiles? Clip = null)
{
    /// <summary>Rows of the table in it: one, or the readings of a repetition.</summary>
    private int Rows => Trial is ContactTrial contact ? contact.Readings.Count : 1;

    /// <summary>Holds the row back after all.</summary>
    public void HoldBack(CellFault fault)
    {
        Table.Tally.HoldBack(Trial.Source!.Line, [fault], Trial.AthleteId, Rows);
        Clip?.HoldBack(Trial);
    }

    /// <summary>Counts the rows as delivered.</summary>
    public void CountKept()
    {
        Table.Tally.CountKept(Rows);
        Clip?.CountKept();
    }
}

/// <summary>The candidates of one day.</summary>
internal sealed class CandidateDay(DateOnly date)
{
    public DateOnly Date { get; } = date;

    public List<Candidate> Candidates { get; private set; } = [];

    /// <summary>Takes out candidates that are already held back as a group.</summary>
    public void Remove(IReadOnlySet<Trial> heldBack)
    {
        if (heldBack.Count > 0) Candidates.RemoveAll(c => heldBack.Contains(c.Trial));
    }

    /// <summary>Puts other candidates in the place of all.</summary>
    public void Replace(List<Candidate> candidates) => Candidates = candidates;

    /// <summary>Holds back every candidate for which a fault is found.</summary>
    public void HoldBackWhere(Func<Candidate, CellFault?> check)
    {
        var kept = new List<Candidate>(Candidates.Count);
        foreach (var candidate in Candidates)
        {
            if (check(candidate) is { } fault) candidate.HoldBack(fault);
            else kept.Add(candidate);
        }

        Candidates = kept;
    }
}

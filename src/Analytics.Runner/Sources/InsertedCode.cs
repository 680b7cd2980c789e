using Analytics.Runner.Documents;

namespace Analytics.Runner.Sources;

/// <summary>Code of other files that is put into a notebook for one run, behind the cell that carries a tag.</summary>
public sealed record InsertedCode
{
    /// <summary>Tag of the cell it follows.</summary>
    public required string AfterTag { get; init; }

    /// <summary>The variable that cell has to declare, since the code works with it.</summary>
    public required string Variable { get; init; }

    /// <summary>The files it is from.</summary>
    public required IReadOnlyList<CodeFile> Files { get; init; }

    /// <summary>The code, one cell each, in order; of the files and what is added to them.</summary>
    public required IReadOnlyList<CodePart> Parts { get; init; }

    /// <summary>Takes out of a notebook what was put in for an earlier run, and puts in the code of this one.</summary>
    /// <param name="document">The notebook; changed.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <param name="inserted">The code; null for none.</param>
    /// <exception cref="NotebookException">The notebook has no place for it, or one name means two things.</exception>
    internal static void Apply(NotebookDocument document, string name, InsertedCode? inserted)
    {
        foreach (var old in document.Cells.Where(c => c.HasTag(CellTag.InjectedCode)).ToList())
            document.Remove(old);
        inserted?.PutInto(document, name);
    }

    private void PutInto(NotebookDocument document, string name)
    {
        var after = Place(document, name);
        RefuseSharedNames(document, name);
        for (var i = Parts.Count - 1; i >= 0; i--)
            document.InsertAfter(NotebookCell.Code(FormattableString.Invariant($"code-for-this-run-{i + 1}"), Parts[i].Code, CellTag.InjectedCode, CellTag.LeaveOut), after);
    }

    private NotebookCell Place(NotebookDocument document, string name)
    {
        var tagged = document.Cells.Where(c => c.IsCode && c.HasTag(AfterTag)).ToList();
        if (tagged.Count != 1)
        {
            throw new NotebookException(Fault.Usage, tagged.Count == 0
                ? $"'{name}' has no code cell tagged '{AfterTag}', so it is not known where to put the code of {FilesInWords}. Tag the cell that declares '{Variable}'; a notebook about something else cannot take it."
                : $"'{name}' has {tagged.Count} cells tagged '{AfterTag}'; leave the tag on the one that declares '{Variable}'.");
        }

        return TopLevelCode.Variables(tagged[0].Source).Any(v => v.Name == Variable) ? tagged[0]
            : throw new NotebookException(Fault.Usage, $"The cell of '{name}' tagged '{AfterTag}' declares no variable '{Variable}' for the code of {FilesInWords} to work with.");
    }

    // In a notebook a name declared again hides the first: later cells would go on with the other one.
    private void RefuseSharedNames(NotebookDocument document, string name)
    {
        var taken = document.Cells.Where(c => c.IsCode).SelectMany(c => TopLevelCode.Variables(c.Source)).Select(v => v.Name).ToHashSet(StringComparer.Ordinal);
        foreach (var part in Files.SelectMany(f => f.Parts))
        {
            if (TopLevelCode.Variables(part.Code).FirstOrDefault(v => taken.Contains(v.Name)) is { } clash)
                throw new NotebookException(Fault.Usage, FormattableString.Invariant($"{part.Place}, line {clash.Line}: '{clash.Name}' is the name of a variable of '{name}'. Give it another name."));
        }
    }

    private string FilesInWords => string.Join(", ", Files.Select(f => $"'{f.Name}'"));
}

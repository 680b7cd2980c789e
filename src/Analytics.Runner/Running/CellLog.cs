using System.Globalization;
using Analytics.Runner.Documents;
using Analytics.Runner.Outputs;
using Analytics.Runner.Sources;

namespace Analytics.Runner.Running;

/// <summary>What happened to one cell of the notebook in this run.</summary>
internal sealed class CellLog
{
    /// <summary>Name in links of the cell with the settings given for a run.</summary>
    public const string InjectedAnchor = "settings";

    /// <summary>Beginning of the names in links of cells with code of other files.</summary>
    public const string InsertedAnchor = "with-";

    /// <summary>Label of the cell with the settings of this run.</summary>
    public const string SettingsLabel = "settings cell";

    private CellLog(NotebookCell cell, string label, string anchor)
    {
        Cell = cell;
        Label = label;
        Anchor = anchor;
    }

    public NotebookCell Cell { get; }

    /// <summary>What messages call the cell; empty for prose.</summary>
    public string Label { get; }

    public string Anchor { get; }

    public OutputList Outputs { get; } = new();

    /// <summary>Place in the order of execution, from 1; null if the run did not come to it.</summary>
    public int? ExecutionCount { get; set; }

    /// <summary>
    /// One log per cell. Code cells are counted as their author counts them: the cell with the settings of this
    /// run has a name instead of a number, also in links, those with code of another file go by their place in it, and an empty cell keeps its number.
    /// </summary>
    /// <param name="document">The notebook, everything put in.</param>
    /// <param name="inserted">The code of other files that was put in, in order.</param>
    public static IReadOnlyList<CellLog> For(NotebookDocument document, IReadOnlyList<CodePart> inserted)
    {
        var others = 0;
        var number = 0;
        var place = 0;
        var logs = new List<CellLog>();
        foreach (var cell in document.Cells)
        {
            if (cell.HasTag(CellTag.InjectedCode))
            {
                logs.Add(new CellLog(cell, inserted[others].Place, string.Create(CultureInfo.InvariantCulture, $"{InsertedAnchor}{++others}")));
                continue;
            }

            var injected = cell.HasTag(CellTag.InjectedSettings);
            var label = !cell.IsCode ? ""
                : injected ? SettingsLabel
                : string.Create(CultureInfo.InvariantCulture, $"cell {++number}");
            logs.Add(new CellLog(cell, label, injected ? InjectedAnchor : string.Create(CultureInfo.InvariantCulture, $"part-{++place}")));
        }

        return logs;
    }
}

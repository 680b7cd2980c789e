using Analytics.Runner.Outputs;

namespace Analytics.Runner.Kernels;

/// <summary>
/// Runs the code of a notebook, cell after cell, in one session. All the runner knows of the kernel's packages
/// stands behind this.
/// </summary>
public interface INotebookKernel : IDisposable
{
    /// <summary>Says which cells will be run, before the first of them is, so that work on them may begin. Running others is no error.</summary>
    /// <param name="cells">The cells, in order.</param>
    void Expect(IReadOnlyList<CellCode> cells);

    /// <summary>Runs one cell. Outputs go into the list as they come, so they are there if the cell never ends.</summary>
    /// <param name="cell">The code.</param>
    /// <param name="outputs">Where its outputs go.</param>
    /// <returns>Why it failed, or null when it ran to its end.</returns>
    Task<CellFailure?> RunAsync(CellCode cell, OutputList outputs);
}

/// <summary>The code of one cell.</summary>
/// <param name="Label">What places in it are called in traces, for example <c>cell 3</c>.</param>
/// <param name="Source">The code.</param>
public sealed record CellCode(string Label, string Source);

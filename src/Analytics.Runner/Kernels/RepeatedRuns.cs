using Analytics.Runner.Outputs;

namespace Analytics.Runner.Kernels;

/// <summary>
/// One kernel for many runs of a notebook that differ in the value of one setting. Cells are compiled once, with the
/// value of the first run; later runs put theirs into the variable right after the cell that declares it, so that no
/// code after it can tell. Where cells may not run again as compiled, each run compiles its own.
/// </summary>
/// <param name="start">Starts the kernel.</param>
/// <param name="setting">The setting that differs; a string.</param>
/// <param name="declaredIn">Label of the cell that declares it for the run, and nothing but settings.</param>
internal sealed class RepeatedRuns(Func<IRepeatingKernel> start, string setting, string declaredIn) : IDisposable
{
    private IRepeatingKernel? kernel;
    private CellCode? declaration;
    private bool keepCompiled;

    /// <summary>Whether no run is under way. One that was given up while its cell was busy never ends.</summary>
    public bool IsFree { get; private set; } = true;

    private string Setting { get; } = setting;

    private string DeclaredIn { get; } = declaredIn;

    /// <summary>A kernel for the next run; the one before has to be disposed of by then.</summary>
    /// <param name="value">The setting's value in it.</param>
    public INotebookKernel For(string value)
    {
        if (kernel is null)
            kernel = start();
        else
            kernel.Rewind(keepCompiled);
        IsFree = false;
        return new Run(this, kernel, value);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // A kernel that is still busy cannot be put away.
        if (IsFree)
            kernel?.Dispose();
    }

    private sealed class Run(RepeatedRuns owner, IRepeatingKernel kernel, string value) : INotebookKernel
    {
        public void Expect(IReadOnlyList<CellCode> cells)
        {
            if (owner.declaration is null)
            {
                owner.keepCompiled = kernel.CanRepeat(cells);
                owner.declaration = cells.First(c => c.Label == owner.DeclaredIn);
            }

            kernel.Expect([.. cells.Select(AsCompiled)]);
        }

        public async Task<CellFailure?> RunAsync(CellCode cell, OutputList outputs)
        {
            var failure = await kernel.RunAsync(AsCompiled(cell), outputs).ConfigureAwait(false);
            if (failure is null && owner.keepCompiled && cell.Label == owner.DeclaredIn)
                kernel.Set(owner.Setting, value);
            return failure;
        }

        public void Dispose() => owner.IsFree = true;

        private CellCode AsCompiled(CellCode cell) => owner.keepCompiled && cell.Label == owner.DeclaredIn ? owner.declaration! : cell;
    }
}

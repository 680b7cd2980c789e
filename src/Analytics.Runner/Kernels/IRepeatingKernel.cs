namespace Analytics.Runner.Kernels;

/// <summary>A kernel that can run the same cells again from the start, for much less than a new kernel would cost.</summary>
public interface IRepeatingKernel : INotebookKernel
{
    /// <summary>Whether these cells as compiled once may run again: they keep nothing outside their variables, and take in no file that may change.</summary>
    /// <param name="cells">The cells, in order.</param>
    bool CanRepeat(IReadOnlyList<CellCode> cells);

    /// <summary>Forgets every variable, as if no cell had run. Only to be called between two cells.</summary>
    /// <param name="keepCompiled">Whether a cell that comes again in its old place need not be compiled again.</param>
    void Rewind(bool keepCompiled);

    /// <summary>Gives a variable of the cells run so far another value.</summary>
    /// <param name="name">Its name; of several with that name the one declared last.</param>
    /// <param name="value">Its value.</param>
    void Set(string name, string value);
}

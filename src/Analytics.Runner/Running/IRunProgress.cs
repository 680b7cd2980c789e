namespace Analytics.Runner.Running;

/// <summary>Hears how far a run is.</summary>
public interface IRunProgress
{
    /// <summary>A code cell starts.</summary>
    /// <param name="label">What the cell is called.</param>
    /// <param name="index">Its place among the code cells to run, from 1.</param>
    /// <param name="count">How many code cells there are.</param>
    void CellStarts(string label, int index, int count);

    /// <summary>All cells that will run have run; the files are being written.</summary>
    void Writing();
}

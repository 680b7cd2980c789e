namespace Analytics.Runner.Batches;

/// <summary>Hears how far a batch is.</summary>
public interface IBatchProgress
{
    /// <summary>It is known what there is to do.</summary>
    /// <param name="toMake">Pages to make.</param>
    /// <param name="alreadyThere">Pages that stay as they are.</param>
    void Begins(int toMake, int alreadyThere);

    /// <summary>The run for one page starts.</summary>
    /// <param name="item">Which page.</param>
    /// <param name="index">Its place among those to make, from 1.</param>
    /// <param name="count">How many there are to make.</param>
    void Starts(BatchItem item, int index, int count);

    /// <summary>The last page is being written.</summary>
    void Finishing();
}

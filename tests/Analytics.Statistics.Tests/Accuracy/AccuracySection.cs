namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>One subject of the accuracy table. Every public class derived from this is found by itself.</summary>
public abstract class AccuracySection
{
    /// <summary>The section of r-and-published.tsv it answers for, such as "2".</summary>
    public abstract string Section { get; }

    /// <summary>Heading in docs/accuracy.md.</summary>
    public abstract string Title { get; }

    /// <summary>Writes into the book what is checked and what is not.</summary>
    public abstract void Fill(AccuracyBook book);
}

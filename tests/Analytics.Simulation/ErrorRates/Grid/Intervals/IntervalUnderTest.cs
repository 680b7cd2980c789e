using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>An interval of the library with what it claims. Every class of this kind is found and measured; to add one, add a file.</summary>
public abstract class IntervalUnderTest
{
    public abstract string Name { get; }

    /// <summary>What the interval claims to hold.</summary>
    public abstract string Claim { get; }

    /// <summary>Share of tables in which it says to hold it.</summary>
    public virtual double Nominal => 0.95;

    /// <summary>Whether reports print it, so that it must hold for normal errors and ten athletes or more.</summary>
    public virtual bool InReports => false;

    /// <summary>The part of the grid where it can differ.</summary>
    public virtual IReadOnlyList<TableCell> Cells => TableCell.WithoutSpread;

    /// <summary>By how much draws without a closed form are cut further, where a draw is dear.</summary>
    public virtual int Dearness => 1;

    /// <summary>Coverage known by theory; null where there is none.</summary>
    public virtual double? ClosedForm(TableCell cell) => null;

    /// <summary>The interval from a table and the truth it should hold; null when the method says it cannot give one.</summary>
    public abstract (Interval Interval, double Truth)? Of(SimulatedTable table);
}

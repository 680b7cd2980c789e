using Analytics.Simulation.Randomness;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Tables;

/// <summary>A table of retests with the truth behind it.</summary>
public sealed class SimulatedTable
{
    private readonly RandomNumbers _random;

    private SimulatedTable(TableCell cell, double[] shifts, double[][] rows, RandomNumbers random)
    {
        (Cell, Shifts, Rows, _random) = (cell, shifts, rows, random);
        Table = TrialTable.FromRows([.. rows.Select(r => (IReadOnlyList<double?>)[.. r.Select(v => (double?)v)])]);
    }

    public TableCell Cell { get; }

    /// <summary>Common shift of each trial, the truth behind changes of the mean.</summary>
    public IReadOnlyList<double> Shifts { get; }

    public IReadOnlyList<double[]> Rows { get; }

    public TrialTable Table { get; }

    /// <summary>Root mean square error of one occasion.</summary>
    public double TypicalError => ErrorLaw.TypicalError(Cell.Errors, Cell.Spread);

    public double BetweenVariance => ErrorLaw.Between(Cell.Errors, Cell.Spread);

    /// <summary>The draw's stream, for a method that needs luck of its own.</summary>
    public RandomNumbers Random => _random;

    /// <summary>Variance a trial shifts everybody by.</summary>
    public double ShiftVariance => Cell.Errors == ErrorKind.CommonShift ? ErrorLaw.ShiftSd * ErrorLaw.ShiftSd : 0;

    public static SimulatedTable Draw(TableCell cell, RandomNumbers random)
    {
        var shifts = new double[cell.Trials];
        if (cell.Errors == ErrorKind.CommonShift)
            for (var j = 0; j < shifts.Length; j++) shifts[j] = ErrorLaw.ShiftSd * random.Normal();
        var rows = new double[cell.Athletes][];
        for (var i = 0; i < rows.Length; i++) rows[i] = ErrorLaw.Athlete(cell.Errors, cell.Spread, shifts, random);
        return new(cell, shifts, rows, random);
    }

    /// <summary>An athlete from outside the table, tested on occasions that lie far apart; nothing is shifted.</summary>
    /// <param name="changes">True change on each occasion, in typical errors.</param>
    public double[] NewAthlete(params ReadOnlySpan<double> changes) => ErrorLaw.Athlete(Cell.Errors, Cell.Spread, changes, _random, together: false);
}

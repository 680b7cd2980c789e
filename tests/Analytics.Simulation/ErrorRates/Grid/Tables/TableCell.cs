namespace Analytics.Simulation.ErrorRates.Grid.Tables;

/// <summary>One case of the grid: how many athletes did how many trials of a test of what reliability, with what errors.</summary>
/// <param name="Athletes">Rows.</param>
/// <param name="Trials">Columns.</param>
/// <param name="Reliability">Share of the variance that is between athletes, for normal errors.</param>
/// <param name="Errors">Kind of error.</param>
public sealed record TableCell(int Athletes, int Trials, double Reliability, ErrorKind Errors)
{
    public static IReadOnlyList<int> AthleteCounts { get; } = [5, 10, 20, 60];

    public static IReadOnlyList<int> TrialCounts { get; } = [2, 3, 5];

    public static IReadOnlyList<double> Reliabilities { get; } = [0.5, 0.7, 0.8, 0.9, 0.95, 0.99];

    /// <summary>Every reliability with normal errors, 0.90 with the others.</summary>
    public static IReadOnlyList<TableCell> Everything { get; } = Grid(AthleteCounts, TrialCounts, Reliabilities, ErrorKinds.All);

    /// <summary>For figures the spread between athletes cannot touch: 0.90 only.</summary>
    public static IReadOnlyList<TableCell> WithoutSpread { get; } = Grid(AthleteCounts, TrialCounts, [0.9], ErrorKinds.All);

    /// <summary>Two trials only.</summary>
    public static IReadOnlyList<TableCell> Pairs { get; } = Grid(AthleteCounts, [2], [0.9], ErrorKinds.All);

    /// <summary>Every value log-normal.</summary>
    public static IReadOnlyList<TableCell> LogNormal { get; } = Grid(AthleteCounts, TrialCounts, [0.9], [ErrorKind.Proportional]);

    /// <summary>SD between athletes in typical errors.</summary>
    public double Spread => Math.Sqrt(Reliability / (1 - Reliability));

    /// <summary>Degrees of freedom of the typical error.</summary>
    public int DegreesOfFreedom => (Athletes - 1) * (Trials - 1);

    public override string ToString() => FormattableString.Invariant($"{Athletes} athletes, {Trials} trials, ICC {Reliability:0.00}, {Errors.Words()}");

    private static IReadOnlyList<TableCell> Grid(IReadOnlyList<int> athletes, IReadOnlyList<int> trials, IReadOnlyList<double> reliabilities, IReadOnlyList<ErrorKind> kinds)
        => [.. from kind in kinds
               from icc in kind == ErrorKind.Normal ? reliabilities : [0.9]
               from n in athletes
               from k in trials
               select new TableCell(n, k, icc, kind)];
}

using Analytics.Simulation.ErrorRates.Grid.Tables;

namespace Analytics.Simulation.ErrorRates.Grid.Verdicts;

/// <summary>One case for a verdict: how well the error is known, what matters, how many tests are behind the baseline, and the errors.</summary>
/// <param name="DegreesOfFreedom">Of the typical error; infinity when known.</param>
/// <param name="Worthwhile">Smallest worthwhile change, in typical errors.</param>
/// <param name="Baseline">Tests averaged before.</param>
/// <param name="Errors">Kind of error.</param>
public sealed record ChangeCase(double DegreesOfFreedom, double Worthwhile, int Baseline, ErrorKind Errors)
{
    public static IReadOnlyList<double> Degrees { get; } = [5, 9, 19, 49, double.PositiveInfinity];

    public static IReadOnlyList<double> WorthwhileSizes { get; } = [0.2, 0.5, 1, 2];

    public static IReadOnlyList<int> Baselines { get; } = [1, 3, 5];

    /// <summary>Normal errors over everything, the other kinds with 9 and 19 degrees of freedom and single tests.</summary>
    public static IReadOnlyList<ChangeCase> All { get; } =
    [
        .. from df in Degrees from swc in WorthwhileSizes from m in Baselines select new ChangeCase(df, swc, m, ErrorKind.Normal),
        .. from kind in ErrorKinds.All.Except([ErrorKind.Normal, ErrorKind.CommonShift]) from df in new double[] { 9, 19 } from swc in WorthwhileSizes select new ChangeCase(df, swc, 1, kind),
    ];

    /// <summary>True changes looked at, in typical errors: none, the smallest that matters, twice that; along one line all sizes to 5.</summary>
    public IReadOnlyList<double> TrueChanges => IsOnCurve ? [.. new[] { 0, Worthwhile, 2 * Worthwhile }.Union(Curve)] : [0, Worthwhile, 2 * Worthwhile];

    public static IReadOnlyList<double> Curve { get; } = [.. Enumerable.Range(0, 21).Select(i => i / 4.0)];

    public bool IsOnCurve => Worthwhile == 0.5 && Baseline == 1 && Errors == ErrorKind.Normal;

    /// <summary>Factor from typical errors to those of a difference between two single tests with the same standard error.</summary>
    public double Rescale => Math.Sqrt(2 / (1 + 1.0 / Baseline));

    public override string ToString() => FormattableString.Invariant(
        $"df {(double.IsPositiveInfinity(DegreesOfFreedom) ? "known" : DegreesOfFreedom)}, SWC {Worthwhile} TE, {Baseline} before, {Errors.Words()}");
}

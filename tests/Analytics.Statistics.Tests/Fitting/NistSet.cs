using Analytics.Metrics.Tests;
using Analytics.Statistics.Fitting;

namespace Analytics.Statistics.Tests.Fitting;

/// <summary>One set of the NIST Statistical Reference Datasets (StRD), non-linear regression [niststrd]; data and values in tests/oracles/nist.</summary>
internal sealed class NistSet
{
    private static readonly ILookup<string, OracleRow> s_certified = OracleTable.Read("nist/certified.csv").ToLookup(r => r.Text("dataset"));

    public NistSet(string name)
    {
        Name = name;
        var rows = OracleTable.Read($"nist/{name.ToLowerInvariant()}.csv");
        (X, Y) = ([.. rows.Select(r => r["x"])], [.. rows.Select(r => r["y"])]);
    }

    /// <summary>All sets at hand, in the order of their difficulty as NIST grades it.</summary>
    public static IReadOnlyList<string> Names { get; } =
        ["Misra1a", "Misra1b", "Chwirut2", "DanWood", "Misra1c", "Misra1d", "Hahn1", "MGH09", "BoxBOD", "Eckerle4"];

    public string Name { get; }

    public double[] X { get; }

    public double[] Y { get; }

    public IReadOnlyList<OracleRow> Parameters => [.. s_certified[Name].Where(r => r.Text("parameter") != "_fit")];

    /// <summary>Certified residual sum of squares, residual SD and degrees of freedom.</summary>
    public OracleRow Whole => s_certified[Name].Single(r => r.Text("parameter") == "_fit");

    public double[] Start(int which) => [.. Parameters.Select(r => r[$"start{which}"])];

    public double[] Solution => [.. Parameters.Select(r => r["certified_value"])];

    public NonlinearFit Fit(ReadOnlySpan<double> start) => Fit(X, Y, start);

    /// <summary>Fits the model of this set to other points. Misra1b and following share Misra1a's points but not its model.</summary>
    public NonlinearFit Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ReadOnlySpan<double> start) => Name switch
    {
        "Misra1a" or "BoxBOD" => LevenbergMarquardt.Fit(new Misra1a(), x, y, start),
        "Misra1b" => LevenbergMarquardt.Fit(new Misra1b(), x, y, start),
        "Misra1c" => LevenbergMarquardt.Fit(new Misra1c(), x, y, start),
        "Misra1d" => LevenbergMarquardt.Fit(new Misra1d(), x, y, start),
        "Chwirut2" => LevenbergMarquardt.Fit(new Chwirut2(), x, y, start),
        "DanWood" => LevenbergMarquardt.Fit(new DanWood(), x, y, start),
        "MGH09" => LevenbergMarquardt.Fit(new Mgh09(), x, y, start),
        "Eckerle4" => LevenbergMarquardt.Fit(new Eckerle4(), x, y, start),
        "Hahn1" => LevenbergMarquardt.Fit(new Hahn1(), x, y, start),
        _ => throw NoSuch(),
    };

    public JacobianCheck CheckDerivatives(ReadOnlySpan<double> at) => Name switch
    {
        "Misra1a" or "BoxBOD" => JacobianCheck.Of(new Misra1a(), X, at),
        "Misra1b" => JacobianCheck.Of(new Misra1b(), X, at),
        "Misra1c" => JacobianCheck.Of(new Misra1c(), X, at),
        "Misra1d" => JacobianCheck.Of(new Misra1d(), X, at),
        "Chwirut2" => JacobianCheck.Of(new Chwirut2(), X, at),
        "DanWood" => JacobianCheck.Of(new DanWood(), X, at),
        "MGH09" => JacobianCheck.Of(new Mgh09(), X, at),
        "Eckerle4" => JacobianCheck.Of(new Eckerle4(), X, at),
        "Hahn1" => JacobianCheck.Of(new Hahn1(), X, at),
        _ => throw NoSuch(),
    };

    private ArgumentOutOfRangeException NoSuch() => new(nameof(Name), Name, "No such set.");
}

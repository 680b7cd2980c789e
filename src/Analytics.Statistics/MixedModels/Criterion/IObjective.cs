namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>A function to be made small, with exact derivatives.</summary>
internal interface IObjective
{
    /// <summary>Number of variables.</summary>
    int Count { get; }

    /// <summary>The value; infinity where the arithmetic breaks down.</summary>
    double Value(ReadOnlySpan<double> x);

    /// <summary>Gradient and second derivatives (n × n) at the point <see cref="Value"/> saw last.</summary>
    (double[] Gradient, double[] Hessian) Derivatives(ReadOnlySpan<double> x);
}

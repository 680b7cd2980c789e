namespace Analytics.Benchmarks;

/// <summary>One benchmark command.</summary>
internal interface IBenchmark
{
    /// <summary>Command word.</summary>
    string Name { get; }

    /// <summary>What it measures, in one line.</summary>
    string What { get; }

    /// <summary>Measures and prints.</summary>
    /// <param name="args">What followed the command word.</param>
    /// <returns>Exit code: 0 measured, 2 could not be measured.</returns>
    int Run(string[] args);
}

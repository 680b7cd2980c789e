namespace Analytics.Statistics.Fitting;

/// <summary>One accepted step of a fit.</summary>
/// <param name="Iteration">Number of the iteration, 0 for the start.</param>
/// <param name="Parameters">Parameters after the step.</param>
/// <param name="Rss">Residual sum of squares there.</param>
/// <param name="Damping">Damping the step was made with.</param>
public sealed record FitIterate(int Iteration, IReadOnlyList<double> Parameters, double Rss, double Damping);

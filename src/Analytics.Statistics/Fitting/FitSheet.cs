using System.Globalization;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.Fitting;

/// <summary>A fit laid out for print.</summary>
internal static class FitSheet
{
    public static ResultSheet Of(NonlinearFit fit)
    {
        var lines = fit.Parameters.Select((_, j) => Parameter(fit, j)).ToList();
        if (fit.ResidualSd is { } sd) lines.Add(new("residual SD", sd));
        return new("Least-squares fit of a curve", "unweighted least squares by damped Gauss-Newton steps [more1978]", lines)
        {
            Basis = Say($"{fit.N} points, {fit.Parameters.Count} parameters, {fit.DegreesOfFreedom} degrees of freedom"),
            Remarks = [.. Remarks(fit)],
        };
    }

    private static ResultLine Parameter(NonlinearFit fit, int j)
    {
        var estimate = fit.Parameter(j);
        return new(j < fit.ParameterNames.Count ? fit.ParameterNames[j] : Say($"parameter {j + 1}"), estimate.Value)
        {
            StandardError = estimate.StandardError,
            Interval = estimate.Interval,
            DegreesOfFreedom = estimate.StandardError is null ? null : fit.DegreesOfFreedom,
            Note = estimate.StandardError is null ? "no error known" : string.Empty,
        };
    }

    private static IEnumerable<string> Remarks(NonlinearFit fit)
    {
        yield return Say($"Ending: {fit.Ending.InWords()} ({fit.Iterations} steps).");
        if (!fit.IsSolution) yield return "The parameters are no solution with an ordinary error; they show how far the fit came.";
        else if (fit.DegreesOfFreedom == 0) yield return "As many points as parameters: the curve passes through all of them and nothing is left to judge its error.";
        if (fit.IsIllConditioned)
            yield return Say($"Ill-conditioned: the parameters nearly replace each other, and about {Math.Log10(fit.Condition!.Value):0} of 16 digits are lost.");
    }

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

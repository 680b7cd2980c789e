using Analytics.Statistics.Results;

namespace Analytics.Statistics.Reliability;

/// <summary>Two trials compared in per cent, through logarithms [hopkins2000].</summary>
/// <param name="Logs">The comparison of the natural logarithms.</param>
public sealed record PercentTrialPair(TrialPair Logs) : Result
{
    /// <summary>Change in the mean, percent: 100 (exp(mean log change) − 1). Its interval is not symmetric, so there is no standard error.</summary>
    public Estimate Change => Percent(Logs.Change.Value, Logs.Change.Interval!.Value, "paired differences of logarithms");

    /// <summary>Coefficient of variation from this pair, percent.</summary>
    public Estimate Variation => Percent(Logs.Error.Value, Logs.Error.Interval(Logs.Change.Interval!.Value.Level), Logs.Error.Method + ", on logarithms");

    /// <summary>Compares two trials; see <see cref="TrialPair.Of"/>.</summary>
    /// <param name="table">Athletes × trials, every value above 0.</param>
    /// <param name="first">Earlier trial, column from 0.</param>
    /// <param name="second">Later trial, column from 0.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    public static PercentTrialPair Of(TrialTable table, int first, int second, double level = 0.95)
        => new(TrialPair.Of(CoefficientOfVariation.Logs(table), first, second, level));

    /// <summary>Every pair of neighbours.</summary>
    /// <param name="table">Athletes × trials, every value above 0.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    public static IReadOnlyList<PercentTrialPair> Neighbours(TrialTable table, double level = 0.95)
        => [.. TrialPair.Neighbours(CoefficientOfVariation.Logs(table), level).Select(p => new PercentTrialPair(p))];

    /// <inheritdoc/>
    public override ResultSheet Sheet() => Logs.Sheet() with
    {
        Title = $"Trial {Logs.First + 1} to trial {Logs.Second + 1}, per cent",
        Method = "paired differences of logarithms [hopkins2000]",
        Lines =
        [
            new("change in the mean", Change.Value, "%") { Interval = Change.Interval, DegreesOfFreedom = Logs.Error.DegreesOfFreedom },
            new("coefficient of variation", Variation.Value, "%") { Interval = Variation.Interval, DegreesOfFreedom = Logs.Error.DegreesOfFreedom },
            new("correlation of logarithms", Logs.Correlation),
        ],
    };

    private Estimate Percent(double value, Interval interval, string method) => new(
        CoefficientOfVariation.ToPercent(value), null,
        new(CoefficientOfVariation.ToPercent(interval.Low), CoefficientOfVariation.ToPercent(interval.High), interval.Level),
        Logs.Change.N, method);
}

using Analytics.Statistics.Results;
using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Reliability;

/// <summary>What a look at error against size advises.</summary>
public enum ErrorAdvice
{
    /// <summary>Too few athletes with a repeat, or nothing varies.</summary>
    CannotTell,

    /// <summary>No sign that error grows with the score: the unit of the test will do.</summary>
    KeepUnits,

    /// <summary>Error grows with the score: use logarithms, state the error in per cent.</summary>
    UseLogs,

    /// <summary>Error depends on the score, and logarithms do not cure it or cannot be taken.</summary>
    NeitherFits,
}

/// <summary>Does the error grow with the score? Rank correlation of each athlete's scatter with their mean, before and after logarithms.</summary>
/// <remarks>
/// Scatter is the SD of an athlete's trials after the trial effects are taken out; for two trials that is |difference − mean difference|/√2. The
/// second figure, the log-likelihood ν ln(s/(l g)) by which logarithms describe the repeats better, weighs the same data another way. Common practice; a squad of
/// like athletes says little either way.
/// </remarks>
/// <param name="Advice">What to do.</param>
/// <param name="RankCorrelation">Of scatter and mean in the unit of the test; null when one of them does not vary.</param>
/// <param name="P">Its two-sided p, by Student's t.</param>
/// <param name="LogRankCorrelation">The same on logarithms; null when a value is not above 0.</param>
/// <param name="LogP">Its two-sided p.</param>
/// <param name="LogGain">Log-likelihood gained by logarithms; above 2 they are clearly better, below −2 clearly worse; null when a value is not above 0 or repeats are exact.</param>
/// <param name="Athletes">Athletes with a repeat.</param>
public sealed record ErrorGrowth(
    ErrorAdvice Advice, double? RankCorrelation, double? P, double? LogRankCorrelation, double? LogP, double? LogGain, int Athletes) : Result
{
    /// <summary>Athletes with a repeat below which nothing is advised.</summary>
    public const int Fewest = 10;

    private const double Clear = 0.05;

    /// <summary>Looks at a table of trials.</summary>
    /// <param name="table">Athletes × trials, gaps allowed.</param>
    /// <exception cref="ArgumentException">Fewer than 3 athletes have a repeat.</exception>
    public static ErrorGrowth Of(TrialTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var fit = AdditiveFit.Of(table);
        if (fit.WithRepeat < 3) throw new ArgumentException($"{fit.WithRepeat} of {table.Athletes} athletes have a repeat; at least 3 are needed to set scatter against size.", nameof(table));
        var raw = Scatter(table, fit);
        var all = Enumerable.Range(0, table.Athletes).SelectMany(i => Values(table, i)).ToArray();
        (double Value, double P)? logs = null;
        double? gain = null;
        if (all.All(v => v > 0))
        {
            var logTable = table.Select(Math.Log);
            var logFit = AdditiveFit.Of(logTable);
            logs = Scatter(logTable, logFit);
            var repeated = Enumerable.Range(0, table.Athletes).Select(i => Values(table, i)).Where(v => v.Length > 1).SelectMany(v => v);
            if (fit is { ResidualSquares: > 0, DegreesOfFreedom: > 0 } && logFit.ResidualSquares > 0)
                gain = fit.DegreesOfFreedom * (0.5 * Math.Log(fit.ResidualSquares / logFit.ResidualSquares) - repeated.Average(Math.Log));
        }

        return new(AdviceOf(raw, logs, gain, fit.WithRepeat), raw?.Value, raw?.P, logs?.Value, logs?.P, gain, fit.WithRepeat);
    }

    /// <summary>The advice as a sentence.</summary>
    public string Words => Advice switch
    {
        ErrorAdvice.UseLogs => "Error grows with the score: analyse logarithms and state the error in per cent.",
        ErrorAdvice.NeitherFits when LogGain is null && LogRankCorrelation is null
            => "Error depends on the score, and logarithms need values above 0: judge low and high scores apart.",
        ErrorAdvice.NeitherFits => "Error depends on the score, and logarithms do not cure it: judge low and high scores apart.",
        ErrorAdvice.KeepUnits => $"No sign that error grows with the score: the unit of the test will do. With {Athletes} athletes a moderate growth can go unseen.",
        _ when Athletes < Fewest => $"{Athletes} athletes have a repeat; below {Fewest} nothing is advised.",
        _ => "Every athlete scatters alike or not at all: nothing can be told.",
    };

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new(
        "Does error grow with the score?", "rank correlation of each athlete's scatter with their mean, trial effects taken out (common practice)",
        [
            new("rank correlation, unit of the test", RankCorrelation) { Note = P is { } p ? SheetProbability.Of(p) : "none: no spread" },
            new("rank correlation, logarithms", LogRankCorrelation) { Note = LogP is { } q ? SheetProbability.Of(q) : "none: values not above 0, or no spread" },
            new("log-likelihood gained by logarithms", LogGain) { Note = "clear beyond ±2" },
        ])
    { Basis = $"{Athletes} athletes with a repeat", Remarks = [Words] };

    private static ErrorAdvice AdviceOf((double Value, double P)? raw, (double Value, double P)? logs, double? gain, int athletes)
    {
        if (athletes < Fewest || raw is not { } r) return ErrorAdvice.CannotTell;
        bool depends = r.P < Clear, logsBetter = gain > 2;
        if (!depends && !logsBetter) return ErrorAdvice.KeepUnits;
        return logs is { } l && l.P >= Clear && (r.Value > 0 || logsBetter) ? ErrorAdvice.UseLogs : ErrorAdvice.NeitherFits;
    }

    private static (double Value, double P)? Scatter(TrialTable table, AdditiveFit fit)
    {
        List<double> means = [], spreads = [];
        for (var i = 0; i < table.Athletes; i++)
        {
            var values = Values(table, i);
            if (values.Length < 2) continue;
            means.Add(values.Average());
            spreads.Add(Moments.StandardDeviation([.. Enumerable.Range(0, table.Trials).Where(j => table[i, j].HasValue).Select(j => table[i, j]!.Value - fit.Effects[j])]));
        }

        return Reliability.RankCorrelation.Of(means, spreads);
    }

    private static double[] Values(TrialTable table, int athlete)
        => [.. Enumerable.Range(0, table.Trials).Where(j => table[athlete, j].HasValue).Select(j => table[athlete, j]!.Value)];
}

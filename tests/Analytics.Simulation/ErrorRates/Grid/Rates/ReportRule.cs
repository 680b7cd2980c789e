using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>The report's rule on whole squads, the worthwhile change estimated too; a report quotes the case nearest to its own.</summary>
public sealed class ReportRule : RateUnderTest
{
    public static IReadOnlyList<int> Athletes { get; } = [5, 10, 20, 60];

    public static IReadOnlyList<int> Degrees { get; } = [9, 19, 59];

    /// <summary>Reliability at which the questions are asked that do not depend on it.</summary>
    public const double Middle = 0.9;

    public static IReadOnlyList<double> Reliabilities { get; } = [0.7, Middle, 0.99];

    public static string[] Questions { get; } =
    [
        "interval of a player holds his change", "interval of the mean holds it",
        "clear verdict, nobody changed", "at least one clear verdict in the squad, nobody changed",
        "clear verdict, all changed by 1 SWC", "clear gain, all changed by 2 SWC", "called too small, all changed by 2 SWC",
    ];

    /// <summary>Questions whose answer depends on the reliability.</summary>
    private static readonly string[] EachReliability = [Questions[2], Questions[4], Questions[5]];

    // Nobody is called "too small" unless the test repeats very well.
    private static double ReliabilityOf(string question) => question == Questions[6] ? Reliabilities[^1] : Middle;

    public override string Name => "The report's rule in a squad";

    public override string Claim => "at most 5 % clear verdicts on unchanged players; typical error and worthwhile change both estimated";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from icc in Reliabilities
           from df in Degrees
           from n in Athletes
           from question in Questions
           where icc == ReliabilityOf(question) || EachReliability.Contains(question)
           select Case(n, df, icc, question),
    ];

    public static string Label(int athletes, int df, double icc, string question)
        => FormattableString.Invariant($"{athletes} players, df {df}, ICC {icc:0.00}: {question}");

    private static RateCase Case(int n, int df, double icc, string question)
    {
        RateCase Of(double? nominal, double change, Func<SquadOfReport, Share> count, double? closed = null)
            => new(Label(n, df, icc, question), nominal, random => count(SquadOfReport.Draw(n, df, icc, change, random)), closed, Dearness: n > 10 ? 2 : 1);

        return Array.IndexOf(Questions, question) switch
        {
            0 => Of(0.95, 0, s => s.Covered(), 0.95),
            1 => Of(0.95, 0, s => s.MeanCovered(), 0.95),
            2 => Of(0.05, 0, s => s.Judged(Verdict.ClearGain, Verdict.ClearLoss)),
            3 => Of(null, 0, s => s.Judged(Verdict.ClearGain, Verdict.ClearLoss).Held > 0),
            4 => Of(null, 1, s => s.Judged(Verdict.ClearGain, Verdict.ClearLoss)),
            5 => Of(null, 2, s => s.Judged(Verdict.ClearGain)),
            _ => Of(null, 2, s => s.Judged(Verdict.TooSmallToMatter)),
        };
    }
}

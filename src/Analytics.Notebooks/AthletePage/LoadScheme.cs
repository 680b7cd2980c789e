using Analytics.Metrics.Strength;
using Analytics.Planning.Loads;

namespace Analytics.Notebooks.AthletePage;

/// <summary>Sets, repetitions and share of the 1RM. The choice is common practice, no source; each lies in the textbook's zones [baechle2008].</summary>
/// <param name="Sets">Sets.</param>
/// <param name="Repetitions">Repetitions of each set.</param>
/// <param name="Percent">Per cent of the 1RM.</param>
internal sealed record LoadScheme(int Sets, int Repetitions, double Percent)
{
    private static readonly IReadOnlyList<LoadScheme> s_slow = [new(5, 5, 75), new(4, 3, 85)];
    private static readonly IReadOnlyList<LoadScheme> s_fast = [new(5, 3, 75), new(5, 2, 80)];

    // In a clean or snatch speed ends the set, not failure, so few repetitions and no table of repetitions.
    private static readonly HashSet<string> s_pulls = new(StringComparer.Ordinal) { Lifts.PowerClean, "hang_clean", "clean", "clean_pull", "snatch", "power_snatch", "jerk", "push_press" };

    /// <summary>A lighter and a heavier scheme; none where per cent of the load does not fit.</summary>
    public static IReadOnlyList<LoadScheme> For(string lift) => LoadBase.IsAddedWeight(lift) ? [] : s_pulls.Contains(lift) ? s_fast : s_slow;

    /// <summary>Repetitions the textbook's table leaves in reserve [baechle2008]; null where it does not print the share or the lift is not slow.</summary>
    public static double? Reserve(string lift, LoadScheme scheme)
        => s_pulls.Contains(lift) ? null
            : RepetitionTables.Textbook.Rows.Where(r => r.Percent == scheme.Percent).Select(r => (double?)(r.Repetitions - scheme.Repetitions)).FirstOrDefault();
}

using Analytics.Planning.Weeks;

namespace Analytics.Season.Training;

/// <summary>Parts of the year as files write them.</summary>
internal static class TrainedPhases
{
    public static readonly IReadOnlyList<SeasonPhase> All = Enum.GetValues<SeasonPhase>();

    public static string Id(SeasonPhase phase) => TrainingWords.Phases.All.First(w => TrainingWords.Phases.Find(w) == phase);
}

using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Sprinting;

/// <summary>Sprint trials for tests.</summary>
internal static class Runs
{
    public static SprintTrial Of(StartType start, IReadOnlyList<Split> splits, TimingMethod timing = TimingMethod.Electronic)
        => new() { AthleteId = "a1", Date = Days.Date, Timing = timing, Start = start, Splits = splits };
}

using Analytics.Simulation.SeasonStudy.Courses;

namespace Analytics.Simulation.SeasonStudy;

/// <summary>The sections of docs/season-study.md, in order.</summary>
public static class StudySections
{
    /// <summary>Fresh sections with nothing counted.</summary>
    public static IReadOnlyList<IStudySection> All() =>
    [
        new TrendSection(),
        new ChangeSection(),
        new ResponseSection(),
        new Transfer.TransferSection(),
    ];
}

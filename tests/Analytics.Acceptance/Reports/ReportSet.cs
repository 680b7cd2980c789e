using Analytics.Acceptance.Programs;

namespace Analytics.Acceptance.Reports;

/// <summary>The reports the tests look at, each made once.</summary>
internal static class ReportSet
{
    private static readonly Lazy<MadeReport> MadeDemo = new(() => MadeReport.Make(Repository.TestingDay));
    private static readonly Lazy<MadeReport> MadeHostile = new(() => MadeReport.Make(Repository.TestingDay, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadeReview = new(() => MadeReport.Make(Repository.ContactReview));
    private static readonly Lazy<MadeReport> MadeHostileReview = new(() => MadeReport.Make(Repository.ContactReview, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadeSeason = new(() => MadeReport.Make(Repository.SeasonReport));
    private static readonly Lazy<MadeReport> MadeHostileSeason = new(() => MadeReport.Make(Repository.SeasonReport, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadePage = new(() => MadeReport.Make(Repository.AthletePage));
    private static readonly Lazy<MadeReport> MadeHostilePage = new(() => MadeReport.Make(Repository.AthletePage, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadeWeek = new(() => MadeReport.Make(Repository.TrainingWeek));
    private static readonly Lazy<MadeReport> MadeHostileWeek = new(() => MadeReport.Make(Repository.TrainingWeek, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadeBench = new(() => MadeReport.Make(Repository.MetricBench));
    private static readonly Lazy<MadeReport> MadeHostileBench = new(() => MadeReport.Make(Repository.MetricBench, "--season", HostileSeason.Make()));
    private static readonly Lazy<MadeReport> MadeFailing = new(() => MadeReport.Make(OwnNotebooks.Failing()));
    private static readonly Lazy<MadeReport> MadeScripted = new(() => MadeReport.Make(OwnNotebooks.WithScripts()));

    /// <summary>The testing day of the demo season.</summary>
    public static MadeReport Demo => MadeDemo.Value;

    /// <summary>The season report of the demo season.</summary>
    public static MadeReport Season => MadeSeason.Value;

    /// <summary>The season report of a season whose names are markup.</summary>
    public static MadeReport HostileSeasonReport => MadeHostileSeason.Value;

    /// <summary>The testing day of a season whose names are markup.</summary>
    public static MadeReport Hostile => MadeHostile.Value;

    /// <summary>The contact review of the demo season.</summary>
    public static MadeReport Review => MadeReview.Value;

    /// <summary>The contact review of a season whose names are markup.</summary>
    public static MadeReport HostileReview => MadeHostileReview.Value;

    /// <summary>The page of the first athlete of the demo season.</summary>
    public static MadeReport Page => MadePage.Value;

    /// <summary>The page of an athlete whose name is markup.</summary>
    public static MadeReport HostilePage => MadeHostilePage.Value;

    /// <summary>The training week of the demo season.</summary>
    public static MadeReport Week => MadeWeek.Value;

    /// <summary>The training week of a season whose names are markup.</summary>
    public static MadeReport HostileWeek => MadeHostileWeek.Value;

    /// <summary>The metric bench on the demo season.</summary>
    public static MadeReport Bench => MadeBench.Value;

    /// <summary>The metric bench on a season whose names are markup.</summary>
    public static MadeReport HostileBench => MadeHostileBench.Value;

    /// <summary>A notebook whose second cell fails.</summary>
    public static MadeReport Failing => MadeFailing.Value;

    /// <summary>A notebook whose outputs try to run scripts and to reach the network.</summary>
    public static MadeReport Scripted => MadeScripted.Value;
}

namespace Analytics.Acceptance.Programs;

/// <summary>Where things lie in the working copy.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string TestingDay => Path.Combine(Root, "notebooks", "testing-day.ipynb");

    public static string SeasonReport => Path.Combine(Root, "notebooks", "season-report.ipynb");

    public static string ContactReview => Path.Combine(Root, "notebooks", "contact-review.ipynb");

    public static string AthletePage => Path.Combine(Root, "notebooks", "athlete-page.ipynb");

    public static string TrainingWeek => Path.Combine(Root, "notebooks", "training-week.ipynb");

    public static string MetricBench => Path.Combine(Root, "notebooks", "metric-bench.ipynb");

    public static string DemoSeason => Path.Combine(Root, "data-demo");

    /// <summary>The built program, as the tests' own build has it.</summary>
    public static string Program => Path.Combine(AppContext.BaseDirectory, "analytics.dll");

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Analytics.sln")))
                return folder.FullName;
        }

        throw new InvalidOperationException("The tests have to run inside the working copy.");
    }
}

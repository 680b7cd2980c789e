namespace Analytics.Season.Trials;

/// <summary>A lift the kit knows; any other identifier is read as well, with a remark.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="HighestKg">Highest load allowed, kg: a little over the heaviest ever lifted by anyone; common practice, no source.</param>
/// <param name="LowestKg">Lowest load allowed, kg.</param>
internal sealed record KnownLift(string Id, double HighestKg, double LowestKg = 2)
{
    /// <summary>The known lifts.</summary>
    public static readonly IReadOnlyList<KnownLift> All =
    [
        new("back_squat", 500), new("front_squat", 400), new("box_squat", 500), new("split_squat", 250),
        new("bench_press", 400), new("incline_press", 300), new("overhead_press", 250), new("push_press", 300),
        new("deadlift", 510), new("trap_bar_deadlift", 550), new("romanian_deadlift", 400), new("hip_thrust", 500),
        new("power_clean", 250), new("hang_clean", 250), new("clean", 280), new("clean_pull", 350), new("snatch", 230), new("power_snatch", 200),
        new("jerk", 280), new("leg_press", 1000), new("row", 300),
        // Added load only: body mass alone is 0.
        new("pull_up", 150, 0), new("dip", 200, 0),
    ];

    /// <summary>Their identifiers.</summary>
    public static readonly IReadOnlyList<string> Ids = [.. All.Select(l => l.Id)];

    /// <summary>Limits for a lift that is not known.</summary>
    public static readonly KnownLift Other = new("", 1000, 0);

    private static readonly Dictionary<string, KnownLift> ById = All.ToDictionary(l => l.Id, StringComparer.Ordinal);

    /// <summary>The lift; <see cref="Other"/> when it is not known.</summary>
    public static KnownLift Of(string id) => ById.GetValueOrDefault(id, Other);
}

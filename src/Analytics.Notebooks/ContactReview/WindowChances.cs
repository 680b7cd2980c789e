using Analytics.Metrics.Contact;
using Analytics.Notebooks.Look;

namespace Analytics.Notebooks.ContactReview;

/// <summary>How likely a time lies before, inside and after the target window.</summary>
/// <param name="Before">0 to 1.</param>
/// <param name="Inside">0 to 1.</param>
/// <param name="After">0 to 1.</param>
internal sealed record WindowChances(double Before, double Inside, double After)
{
    /// <summary>From which chance on a report says where a player is: four in five, our choice.</summary>
    public const double Sure = 0.8;

    public static WindowChances? Of(PlayerFigure time, TargetWindow window)
        => time.ChanceBelow(window.Earliest.Seconds) is { } before && time.ChanceBelow(window.Latest.Seconds) is { } until ? new(before, Math.Max(0, until - before), 1 - until) : null;

    public static WindowChances Of(WindowOdds odds) => new(odds.Before, odds.Inside, odds.After);

    /// <summary>Where the time most likely lies, when that is sure enough; null when it cannot be told.</summary>
    public Place? Where => Before >= Sure ? Place.Before : Inside >= Sure ? Place.Inside : After >= Sure ? Place.After : null;

    /// <summary>The verdict in words.</summary>
    public string Words => Where switch
    {
        Place.Before => "before the window",
        Place.Inside => "inside the window",
        Place.After => "after the window",
        _ => "cannot tell yet",
    };

    /// <summary>The three chances, adding up to 100.</summary>
    public string Numbers
    {
        get
        {
            var (before, after) = (Math.Round(100 * Before), Math.Round(100 * After));
            var inside = Math.Max(0, 100 - before - after);
            return $"before {Share(before)}, inside {Share(inside)}, after {Share(after)}";
        }
    }

    // A chance is never shown as none or certain.
    private static string Share(double percent) => percent < 1 ? $"under {Figures.Plain(1, 0, "%")}" : percent > 99 ? $"over {Figures.Plain(99, 0, "%")}" : Figures.Plain(percent, 0, "%");
}

/// <summary>Against the window.</summary>
internal enum Place
{
    Before,
    Inside,
    After,
}

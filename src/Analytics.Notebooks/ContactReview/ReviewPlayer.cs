using Analytics.Metrics.Contact;
using Analytics.Season;
using Analytics.Statistics;

namespace Analytics.Notebooks.ContactReview;

/// <summary>A player with his filmed repetitions and their means; a mean is null when no repetition has the figure.</summary>
internal sealed record ReviewPlayer
{
    public required Athlete Athlete { get; init; }

    /// <summary>His repetitions by attempt; at least one.</summary>
    public required IReadOnlyList<ContactMeasures> Repetitions { get; init; }

    /// <summary>Time to contact, s.</summary>
    public required PlayerFigure Time { get; init; }

    /// <summary>Lean at contact of the shin of the leg on the ground, °.</summary>
    public PlayerFigure? Shin { get; init; }

    /// <summary>Lean of the trunk at contact, °.</summary>
    public PlayerFigure? Trunk { get; init; }

    /// <summary>Speed at contact, m/s.</summary>
    public PlayerFigure? Speed { get; init; }

    /// <summary>Momentum at contact, kg·m/s.</summary>
    public PlayerFigure? Momentum { get; init; }

    /// <summary>Trunk change after contact, °.</summary>
    public PlayerFigure? TrunkChange { get; init; }

    public TargetWindow Window => Repetitions[0].Trial.Window;

    /// <summary>Chances of his mean time against the window; null when no error is known.</summary>
    public WindowChances? Chances => WindowChances.Of(Time, Window);

    /// <summary>A figure of every repetition that has it.</summary>
    public static IReadOnlyList<Estimate> Of(IEnumerable<ContactMeasures> repetitions, Func<ContactMeasures, Estimate?> figure) => [.. repetitions.Select(figure).OfType<Estimate>()];
}

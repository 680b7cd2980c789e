using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>Everything one athlete did on one testing day.</summary>
public sealed record AthleteDay
{
    /// <summary>Identifier of the athlete.</summary>
    public required string AthleteId { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>All kept trials of that day, in file order.</summary>
    public required IReadOnlyList<Trial> Trials { get; init; }

    /// <summary>Body mass on the day, else the latest one before it in the same season; null when never weighed in it.</summary>
    public Mass? BodyMass { get; init; }

    /// <summary>The day <see cref="BodyMass"/> was taken.</summary>
    public DateOnly? BodyMassDate { get; init; }

    /// <summary>Stature, from the athlete list or the latest measurement.</summary>
    public Length? Stature { get; init; }

    /// <summary>The trials of one kind.</summary>
    /// <typeparam name="T">Kind of trial.</typeparam>
    public IEnumerable<T> Of<T>() where T : Trial => Trials.OfType<T>();
}

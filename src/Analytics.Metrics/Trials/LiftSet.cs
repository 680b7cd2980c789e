using Analytics.Quantities;

namespace Analytics.Metrics.Trials;

/// <summary>One set of a lift, taken to the stated repetitions.</summary>
public sealed record LiftSet : Trial
{
    /// <summary>Lift identifier, for example <c>back_squat</c>, <c>bench_press</c>, <c>power_clean</c>.</summary>
    public required string Lift { get; init; }

    /// <summary>Load on the bar, bar included.</summary>
    public required Mass Load { get; init; }

    /// <summary>Repetitions completed, from 1.</summary>
    public required int Repetitions { get; init; }

    /// <summary>Repetitions judged left in reserve; null or 0 when the set went to failure.</summary>
    public double? RepetitionsInReserve { get; init; }

    /// <summary>Vertical rise of the bar over the timed pull, for mean bar power.</summary>
    public Length? BarRise { get; init; }

    /// <summary>Time of that rise.</summary>
    public Duration? PullTime { get; init; }
}

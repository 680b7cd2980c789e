using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Motion;

/// <summary>A time between two frames with its standard error.</summary>
/// <param name="Value">The time.</param>
/// <param name="StandardError">√((Δ₁² + Δ₂²)/12), with Δ the frame intervals before the two events: each happened somewhere between two frames. Judging the frame by eye comes on top.</param>
public readonly record struct FrameTime(Duration Value, Duration StandardError);

/// <summary>One step: from a touchdown to the next.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Far">The step's foot is the far one.</param>
/// <param name="Contact">Touchdown to toe-off; null when toe-off was not read.</param>
/// <param name="Flight">Toe-off to the next touchdown; null when toe-off was not read, or for the last step.</param>
/// <param name="Step">Touchdown to the next touchdown; null for the last step.</param>
/// <param name="RateHertz">Steps a second, 1/step; null for the last step.</param>
/// <param name="RateStandardErrorHertz">SE(step)/step².</param>
public sealed record StepTime(int Number, bool Far, FrameTime? Contact, FrameTime? Flight, FrameTime? Step, double? RateHertz, double? RateStandardErrorHertz);

/// <summary>Contact, flight and step times from touchdown and toe-off frames.</summary>
public static class StepTimes
{
    /// <summary>The times of all steps.</summary>
    /// <param name="clock">Times of the frames.</param>
    /// <param name="contacts">Ground contacts in order of touchdown.</param>
    /// <exception cref="ArgumentException">Events out of order, or a frame without a time.</exception>
    public static IReadOnlyList<StepTime> Of(FrameClock clock, IReadOnlyList<FootContact> contacts)
    {
        ArgumentNullException.ThrowIfNull(clock);
        ArgumentNullException.ThrowIfNull(contacts);
        var steps = new List<StepTime>();
        for (var i = 0; i < contacts.Count; i++)
        {
            var (here, next) = (contacts[i], i + 1 < contacts.Count ? contacts[i + 1] : null);
            if (here.ToeOffFrame <= here.TouchdownFrame)
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Step {i + 1}: toe-off at frame {here.ToeOffFrame} must come after touchdown at frame {here.TouchdownFrame}."), nameof(contacts));
            if (next?.TouchdownFrame <= here.TouchdownFrame)
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Step {i + 2}: touchdown at frame {next!.TouchdownFrame} must come after that of step {i + 1}, frame {here.TouchdownFrame}. List contacts in order."), nameof(contacts));
            if (next?.TouchdownFrame < here.ToeOffFrame)
                throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"Step {i + 2}: touchdown at frame {next!.TouchdownFrame} comes before toe-off of step {i + 1}, frame {here.ToeOffFrame}; running has no double support. Check both frames."), nameof(contacts));
            var step = next is null ? null : Between(clock, here.TouchdownFrame, next.TouchdownFrame);
            steps.Add(new(i + 1, here.Far,
                here.ToeOffFrame is { } off ? Between(clock, here.TouchdownFrame, off) : null,
                here.ToeOffFrame is { } left && next is not null ? Between(clock, left, next.TouchdownFrame) : null,
                step,
                step is { } s ? 1 / s.Value.Seconds : null,
                step is { } t ? t.StandardError.Seconds / (t.Value.Seconds * t.Value.Seconds) : null));
        }
        return steps;
    }

    private static FrameTime? Between(FrameClock clock, int from, int to)
    {
        double a = clock.IntervalAt(from).Seconds, b = clock.IntervalAt(to).Seconds;
        return new FrameTime(clock.Between(from, to), Duration.FromSeconds(Math.Sqrt(((a * a) + (b * b)) / 12)));
    }
}

using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Results;

namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>
/// Change-of-direction deficit: time of the turn test less 10 m sprint time, for each side and for their mean. It takes running speed out of the test; faster runners tend to have the larger one.
/// The sprint must be timed by the same gates and from the same kind of start. Sources: [nimphius2016], [dossantos2019].
/// </summary>
public sealed record DirectionDeficit : Result
{
    private readonly Duration? turnError;
    private readonly Duration? sprintError;

    private DirectionDeficit(TurnTest test, Duration left, Duration right, Duration sprint, Duration? turnError, Duration? sprintError)
        => (Test, LeftTime, RightTime, SprintTime, this.turnError, this.sprintError) = (test, left, right, sprint, turnError, sprintError);

    /// <summary>Which test.</summary>
    public TurnTest Test { get; }

    /// <summary>Time turning left.</summary>
    public Duration LeftTime { get; }

    /// <summary>Time turning right.</summary>
    public Duration RightTime { get; }

    /// <summary>10 m sprint time.</summary>
    public Duration SprintTime { get; }

    /// <summary>Mean of both turns less the sprint, in s.</summary>
    public Estimate Mean => Make(((LeftTime + RightTime) / 2 - SprintTime).Seconds, 2, "mean deficit");

    /// <summary>Left turn less the sprint, in s.</summary>
    public Estimate Left => Make((LeftTime - SprintTime).Seconds, 1, "deficit, left");

    /// <summary>Right turn less the sprint, in s.</summary>
    public Estimate Right => Make((RightTime - SprintTime).Seconds, 1, "deficit, right");

    /// <summary>The deficit of an athlete.</summary>
    /// <param name="test">Which test.</param>
    /// <param name="left">Time turning left, above 0.</param>
    /// <param name="right">Time turning right, above 0.</param>
    /// <param name="sprint">10 m sprint time, above 0.</param>
    /// <param name="turnError">Standard error of one side's time; null when not known.</param>
    /// <param name="sprintError">Standard error of the sprint time; null when not known.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time of 0 or less, an error below 0.</exception>
    public static DirectionDeficit Of(TurnTest test, Duration left, Duration right, Duration sprint, Duration? turnError = null, Duration? sprintError = null)
    {
        if (turnError is { } t) Require.NotNegative(t, "error of a turn time");
        if (sprintError is { } s) Require.NotNegative(s, "error of the sprint time");
        return new(test, Require.Positive(left, "time turning left"), Require.Positive(right, "time turning right"), Require.Positive(sprint, "10 m sprint time"), turnError, sprintError);
    }

    /// <summary>Asymmetry of the times.</summary>
    /// <param name="denominator">What to divide by.</param>
    public SideAsymmetry TimeAsymmetry(AsymmetryDenominator denominator) => SideAsymmetry.Of(LeftTime, RightTime, denominator, turnError, turnError);

    /// <summary>Asymmetry of the deficits. Being divided by far less than a time, it is far larger, and so is its error.</summary>
    /// <param name="denominator">What to divide by.</param>
    /// <exception cref="ArgumentOutOfRangeException">A deficit of 0 or less, of which no share can be taken.</exception>
    public SideAsymmetry DeficitAsymmetry(AsymmetryDenominator denominator)
        => SideAsymmetry.Make("deficit", LeftTime - SprintTime, RightTime - SprintTime, denominator,
            sprintError is null ? null : turnError, sprintError is null ? null : turnError, sprintError ?? Duration.Zero, double.PositiveInfinity);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => new("Change-of-direction deficit", "time of the turn test less 10 m sprint time [nimphius2016]", [Line(Mean, "mean"), Line(Left, "left"), Line(Right, "right")])
    {
        Basis = $"{(Test == TurnTest.FiveOhFive ? "505" : "modified 505")} {LeftTime} left, {RightTime} right; 10 m in {SprintTime}",
        Remarks = ["Only good when the sprint was timed by the same gates and from the same kind of start."],
    };

    private static ResultLine Line(Estimate e, string name) => new(name, e.Value, "s") { Interval = e.Interval, StandardError = e.StandardError, Note = e.StandardError is null ? "no error known" : string.Empty };

    private Estimate Make(double value, int sides, string name)
    {
        if (turnError is not { } turn || sprintError is not { } sprint) return new(value, null, null, sides, name);
        var error = Math.Sqrt((turn.Seconds * turn.Seconds / sides) + (sprint.Seconds * sprint.Seconds));
        var reach = NormalLaw.TwoSided(0.95) * error;
        return new(value, error, new(value - reach, value + reach), sides, name + ", typical errors taken as known");
    }
}

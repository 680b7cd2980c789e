namespace Analytics.Statistics.Change;

/// <summary>A rule that turns a change into a verdict, with the rate at which it is wrong about an unchanged athlete.</summary>
public abstract record VerdictRule
{
    /// <summary>Coverage of the interval the rule reads, above 0 and below 1.</summary>
    public required double Level
    {
        get;
        init => field = Require.Share(value, nameof(Level));
    }

    /// <summary>The rule in one sentence a report can print.</summary>
    public abstract string Statement { get; }

    /// <summary>
    /// Largest rate of clear verdicts, gain or loss, for an athlete who has not changed, averaged over typical errors
    /// estimated from repeats; never exceeded for normal errors, whatever the smallest worthwhile change.
    /// </summary>
    public abstract double LargestFalseFlagRate { get; }

    /// <summary>Rate of clear verdicts, gain or loss together.</summary>
    /// <param name="trueChange">True change in typical errors; 0 gives the false-flag rate.</param>
    /// <param name="worthwhile">Smallest worthwhile change in typical errors, 0 or more; 0 when there is none.</param>
    /// <param name="degreesOfFreedom">Degrees of freedom of the typical error; infinity when known.</param>
    public abstract double ClearRate(double trueChange, double worthwhile, double degreesOfFreedom);

    /// <summary>Judges one change.</summary>
    /// <param name="change">The change with its error.</param>
    /// <param name="worthwhile">Smallest worthwhile change in the unit of the test, above 0; null when none can be stated.</param>
    /// <param name="lowerIsBetter">True for times and the like.</param>
    public Verdict Judge(IndividualChange change, double? worthwhile, bool lowerIsBetter = false)
    {
        ArgumentNullException.ThrowIfNull(change);
        if (worthwhile is { } w) Require.Positive(w, nameof(worthwhile));
        var interval = change.Interval(Level);
        if (IsClear(change, interval, worthwhile ?? 0))
            return change.Difference > 0 == lowerIsBetter ? Verdict.ClearLoss : Verdict.ClearGain;
        return worthwhile is { } band && interval.Low > -band && interval.High < band
            ? Verdict.TooSmallToMatter
            : Verdict.CannotTellYet;
    }

    /// <summary>Whether the change is beyond what error explains, in either direction.</summary>
    /// <param name="change">The change.</param>
    /// <param name="interval">Its interval at <see cref="Level"/>.</param>
    /// <param name="worthwhile">Smallest worthwhile change, 0 when none.</param>
    protected abstract bool IsClear(IndividualChange change, Interval interval, double worthwhile);
}

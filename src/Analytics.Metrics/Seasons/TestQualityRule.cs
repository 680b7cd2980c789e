namespace Analytics.Metrics.Seasons;

/// <summary>What to do with a test.</summary>
public enum TestAdvice
{
    /// <summary>It tells athletes apart and enough of them do it.</summary>
    Keep,

    /// <summary>It tells something, but is too noisy or too often missing as it is done.</summary>
    Mend,

    /// <summary>Even at the upper end of its doubt error is larger than what athletes differ by.</summary>
    Drop,

    /// <summary>Too little is known of it; never a reason to drop it.</summary>
    CannotTellYet,
}

/// <summary>Words of the advice.</summary>
public static class TestAdviceWords
{
    /// <summary>What a coach reads: keep, mend, drop or cannot tell yet.</summary>
    /// <param name="advice">The advice.</param>
    public static string Words(this TestAdvice advice) => advice switch
    {
        TestAdvice.Keep => "keep",
        TestAdvice.Mend => "mend",
        TestAdvice.Drop => "drop",
        _ => "cannot tell yet",
    };
}

/// <summary>The thresholds behind <see cref="TestQuality.Advice"/>. All are our choice, no source.</summary>
public sealed record TestQualityRule
{
    /// <summary>The rule of the reports.</summary>
    public static TestQualityRule Standard { get; } = new();

    /// <summary>Signal against noise from which a test is kept: true SD between athletes of a group over the typical error. 2 is a reliability of 0.80.</summary>
    public double KeepFrom { get; init; } = 2;

    /// <summary>Signal against noise below which, its upper limit too, a test is dropped. 1 is a reliability of 0.50.</summary>
    public double DropBelow { get; init; } = 1;

    /// <summary>Least share of the squad with a usable value on a usual testing day.</summary>
    public double LeastUsable { get; init; } = 0.7;

    /// <summary>Coverage of the detectable change and of intervals.</summary>
    public double Level { get; init; } = 0.95;

    /// <summary>Chance with which a worthwhile change must be seen for the number of test days needed.</summary>
    public double Power { get; init; } = 0.80;

    /// <summary>Most test days on one occasion that a squad could do; where a player's worthwhile change takes more, the test is called too coarse for it.</summary>
    public int MostDays { get; init; } = 3;

    /// <summary>Athletes to retest for an error known well enough: with 20 its 95 % interval is 0.76 to 1.46 of it.</summary>
    public int RetestWanted { get; init; } = 20;

    /// <summary>The rule in words a report can print.</summary>
    public string Statement => FormattableString.Invariant(
        $"Keep: signal against noise of at least {KeepFrom:0.##} and a usable value for {100 * LeastUsable:0} % of the squad on a usual testing day. Drop: signal against noise below {DropBelow:0.##} even at the upper end of its {100 * Level:0.#} % interval, by a retest of this squad. Cannot tell yet: no error between days is known, too few athletes, or an interval from below {DropBelow:0.##} to {KeepFrom:0.##} or more. Else: mend. The limits are our choice, no source.");
}

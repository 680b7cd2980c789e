using Analytics.Statistics.MixedModels.Squads;
using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>
/// Where a squad and its groups stand on each testing day and how they move, with athletes missing here and there. Athletes carry a random
/// intercept, and a random slope on the day where enough of them have been tested often enough, so that who turned up on a day does not pass
/// for a change of the squad. Two models by REML: means by day, and means by group and day.
/// </summary>
/// <remarks>A mean is that of the athletes' true levels, missing ones included by what they showed on other days; it assumes that they are not missing because of their level that day.</remarks>
public sealed record SquadTrend : Result
{
    /// <summary>Athletes with a slope need this many distinct days.</summary>
    public const int DaysForSlope = 3;

    /// <summary>Random slopes are used when at least this many athletes have <see cref="DaysForSlope"/> distinct days.</summary>
    public const int AthletesForSlope = 10;

    /// <summary>What was measured.</summary>
    public required string ResponseName { get; init; }

    /// <summary>Means of the squad, in order of days; empty when no model could be fitted.</summary>
    public required IReadOnlyList<TrendMean> Squad { get; init; }

    /// <summary>Means of every group on the days it was tested, groups in ordinal order; empty when no model could be fitted.</summary>
    public required IReadOnlyList<TrendMean> Groups { get; init; }

    /// <summary>Straight-line change a unit of day: the squad first (group null), then, where there are two groups or more, each with 2 days or more.</summary>
    public required IReadOnlyList<TrendSlope> Slopes { get; init; }

    /// <summary>Whether athletes had slopes of their own in all models; when the data did not bear them out, a remark says so.</summary>
    public required bool HasRandomSlopes { get; init; }

    /// <summary>Athletes.</summary>
    public required int Athletes { get; init; }

    /// <summary>Rows.</summary>
    public required int Rows { get; init; }

    /// <summary>What could not be done, and boundary fits, in words; may be empty.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }

    /// <summary>Fits the models.</summary>
    /// <param name="rows">One row an athlete and day; several rows of an athlete on a day count as repeats.</param>
    /// <param name="responseName">What was measured.</param>
    /// <param name="level">Coverage of the intervals, above 0 and below 1.</param>
    /// <exception cref="ArgumentException">No rows, a number that is not finite, an empty name, or an athlete in two groups.</exception>
    public static SquadTrend Of(IReadOnlyList<TrendRow> rows, string responseName = "response", double level = 0.95)
    {
        Require.Share(level, nameof(level));
        return new TrendFits(rows, responseName, level).Result();
    }

    /// <inheritdoc/>
    public override ResultSheet Sheet() => TrendSheet.Of(this);
}

/// <summary>One value of one athlete.</summary>
/// <param name="Athlete">Who.</param>
/// <param name="Group">Position group, the same in all rows of the athlete.</param>
/// <param name="Day">When, in days or any other unit of time; rows of one testing day have the same number.</param>
/// <param name="Value">The value.</param>
public sealed record TrendRow(string Athlete, string Group, double Day, double Value)
{
    /// <summary>How well the value is known: its residual variance is that of the others over this; above 0, 1 for a usual value.</summary>
    public double Weight { get; init; } = 1;
}

/// <summary>A mean on a day.</summary>
/// <param name="Group">The group; null for the squad.</param>
/// <param name="Day">The day.</param>
/// <param name="Athletes">Athletes tested then.</param>
/// <param name="Mean">The mean with its doubt.</param>
/// <param name="SinceFirst">Change since the first day of the squad or group, with its doubt; null on that day.</param>
public sealed record TrendMean(string? Group, double Day, int Athletes, FixedEffect Mean, FixedEffect? SinceFirst)
{
    /// <summary>
    /// The same of these athletes themselves (all in the model, those who missed the day by what they showed on others), where <see cref="Mean"/> and
    /// <see cref="SinceFirst"/> speak of the population they come from. Narrower: how athletes differ is no error of their own mean.
    /// </summary>
    public required OwnTrend Own { get; init; }
}

/// <summary>A mean of the athletes in the model themselves.</summary>
/// <param name="Mean">Mean true level on the day.</param>
/// <param name="SinceFirst">Mean true change since the first day; null on that day.</param>
/// <param name="Levels">Predicted true level of every athlete on the day, in one order on all days.</param>
public sealed record OwnTrend(OwnMean Mean, OwnMean? SinceFirst, IReadOnlyList<double> Levels);

/// <summary>A straight-line change.</summary>
/// <param name="Group">The group; null for the squad.</param>
/// <param name="PerDay">Change a unit of day, with its doubt.</param>
public sealed record TrendSlope(string? Group, FixedEffect PerDay);

namespace Analytics.Notebooks.Charts;

/// <summary>A measured point, with its interval when one is known.</summary>
/// <param name="X">Value on the horizontal axis.</param>
/// <param name="Y">Value on the vertical axis.</param>
/// <param name="Low">Lower limit of Y; null when no error is known.</param>
/// <param name="High">Upper limit of Y; null when no error is known.</param>
public sealed record XyPoint(double X, double Y, double? Low = null, double? High = null);

/// <summary>A line through a chart, with the points it was made from and its band.</summary>
/// <param name="Name">Name shown in the key.</param>
/// <param name="Line">Places along the line, in rising X; empty for points alone.</param>
public sealed record Curve(string Name, IReadOnlyList<(double X, double Y)> Line)
{
    /// <summary>Interval along the line, in rising X; empty for none.</summary>
    public IReadOnlyList<(double X, double Low, double High)> Band { get; init; } = [];

    /// <summary>Measured points; empty for none.</summary>
    public IReadOnlyList<XyPoint> Points { get; init; } = [];
}

/// <summary>A testing day in a trend.</summary>
/// <param name="Day">The day.</param>
/// <param name="Value">Value in the unit of the axis.</param>
/// <param name="Low">Lower limit; null when no error is known.</param>
/// <param name="High">Upper limit; null when no error is known.</param>
public sealed record TrendPoint(DateOnly Day, double Value, double? Low = null, double? High = null);

/// <summary>One line of a trend.</summary>
/// <param name="Name">Name of the group, player or measure.</param>
/// <param name="Points">Its testing days, in order.</param>
public sealed record TrendLine(string Name, IReadOnlyList<TrendPoint> Points);

/// <summary>A player in a scatter plot.</summary>
/// <param name="Name">Name shown when pointed at, or beside the mark.</param>
/// <param name="X">Value on the horizontal axis.</param>
/// <param name="Y">Value on the vertical axis.</param>
/// <param name="Group">Group, shown by colour and shape; may be empty.</param>
/// <param name="Labelled">Whether the name stands beside the mark where there is room.</param>
public sealed record ScatterPoint(string Name, double X, double Y, string Group = "", bool Labelled = false);

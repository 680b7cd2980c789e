namespace Analytics.Statistics.Results;

/// <summary>A result laid out for print: a title, one line a figure, the method and how much is behind it, remarks.</summary>
/// <param name="Title">What was estimated, in the reader's words.</param>
/// <param name="Method">How, in words a report can print; with the key of the source where there is one.</param>
/// <param name="Lines">The figures, most wanted first; at least one.</param>
public sealed record ResultSheet(string Title, string Method, IReadOnlyList<ResultLine> Lines)
{
    /// <summary>What the result rests on, in words with numbers: "20 athletes, 3 trials; 2 left out for a missing trial".</summary>
    public required string Basis { get; init; }

    /// <summary>What a reader must know to read the figures rightly; may be empty.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>The sheet as text.</summary>
    public string ToText() => SheetText.Of(this);

    /// <summary>The sheet as an HTML table with a caption and scoped heads, every text escaped.</summary>
    public string ToHtml() => SheetHtml.Of(this);
}

/// <summary>One figure of a result.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">The figure; null where it does not exist, with a remark that says why.</param>
/// <param name="Unit">Unit; empty for a bare number, or for the unit of the data.</param>
public sealed record ResultLine(string Name, double? Value, string Unit = "")
{
    /// <summary>Interval in the unit of the value; null when there is none.</summary>
    public Interval? Interval { get; init; }

    /// <summary>Standard error in the unit of the value; null when there is none.</summary>
    public double? StandardError { get; init; }

    /// <summary>Degrees of freedom; null when the word does not apply, infinity when an error is known.</summary>
    public double? DegreesOfFreedom { get; init; }

    /// <summary>Says in words what a number cannot; may be empty.</summary>
    public string Note { get; init; } = string.Empty;
}

namespace Analytics.Runner.Outputs;

/// <summary>Something a cell put out.</summary>
public abstract record CellOutput;

/// <summary>Console text.</summary>
/// <param name="IsError">Whether it went to standard error.</param>
/// <param name="Text">The text.</param>
public sealed record StreamOutput(bool IsError, string Text) : CellOutput;

/// <summary>A value shown in one or more forms.</summary>
/// <param name="Forms">The forms, in the order given.</param>
/// <param name="IsResult">Whether it is the value of the cell's last expression.</param>
public sealed record DisplayOutput(IReadOnlyList<OutputForm> Forms, bool IsResult) : CellOutput
{
    /// <summary>The form of a media type, or null.</summary>
    /// <param name="mediaType">For example <c>text/html</c>.</param>
    public string? Form(string mediaType) => Forms.FirstOrDefault(f => f.MediaType == mediaType)?.Content;
}

/// <summary>One form of a shown value.</summary>
/// <param name="MediaType">For example <c>text/html</c>.</param>
/// <param name="Content">The content; JSON text for JSON types.</param>
public sealed record OutputForm(string MediaType, string Content);

/// <summary>The failure that ended a cell.</summary>
/// <param name="Failure">What failed, and where.</param>
public sealed record ErrorOutput(CellFailure Failure) : CellOutput;

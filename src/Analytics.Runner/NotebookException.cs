namespace Analytics.Runner;

/// <summary>A notebook, setting or file that cannot be used. The message says what, where and what to do.</summary>
public sealed class NotebookException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="kind">Whether the request or the material is at fault.</param>
    /// <param name="message">What is wrong, where, and what to do.</param>
    /// <param name="inner">The underlying failure, if there is one.</param>
    public NotebookException(Fault kind, string message, Exception? inner = null) : base(message, inner) => Kind = kind;

    /// <summary>Whether the request or the material is at fault.</summary>
    public Fault Kind { get; }
}

/// <summary>Where a fault lies; the command line turns it into its exit code.</summary>
public enum Fault
{
    /// <summary>What was asked for cannot be meant: an unknown setting, a missing notebook.</summary>
    Usage,

    /// <summary>What was found cannot be used: a damaged notebook, a folder that cannot be written.</summary>
    Data,
}

namespace Analytics.Quantities;

/// <summary>Two dimensions that had to be the same are not.</summary>
public sealed class UnitMismatchException : Exception
{
    /// <summary>Without words.</summary>
    public UnitMismatchException()
    {
    }

    /// <summary>Says which dimensions met.</summary>
    /// <param name="message">What happened, beginning with a small letter.</param>
    public UnitMismatchException(string message) : base(message)
    {
    }

    /// <summary>Says which dimensions met, and why.</summary>
    /// <param name="message">What happened, beginning with a small letter.</param>
    /// <param name="innerException">The cause.</param>
    public UnitMismatchException(string message, Exception innerException) : base(message, innerException)
    {
    }
}

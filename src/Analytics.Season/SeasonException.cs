using Analytics.Season.Cells;

namespace Analytics.Season;

/// <summary>A season that cannot be used at all. The message says what, where and what to do.</summary>
public sealed class SeasonException : Exception
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">What is wrong, where, and what to do.</param>
    public SeasonException(string message) : base(CellMarks.Strip(message))
    {
    }

    /// <summary>Makes the exception from an underlying failure.</summary>
    /// <param name="message">What is wrong, where, and what to do.</param>
    /// <param name="inner">The underlying failure.</param>
    public SeasonException(string message, Exception inner) : base(CellMarks.Strip(message), inner)
    {
    }
}

namespace Analytics.Statistics.Results;

/// <summary>A result of the library that prints itself: as text, and as a table in a notebook, both from one <see cref="ResultSheet"/>.</summary>
[TypeFormatterSource(typeof(ResultFormatterSource))]
public abstract record Result
{
    /// <summary>What the result says: its figures with their doubt, the method, the numbers behind it.</summary>
    public abstract ResultSheet Sheet();

    /// <summary>The sheet as text with columns padded by spaces.</summary>
    public sealed override string ToString() => Sheet().ToText();
}

namespace Analytics.Statistics.Association.Repeated;

/// <summary>The gains of all athletes are the same in a measure, so there is nothing to correlate.</summary>
public sealed class GainsAlikeException : ArgumentException
{
    internal GainsAlikeException()
        : base("The gains of all athletes are the same in one of the measures; a correlation needs gains that differ.")
    {
    }
}

namespace Analytics.Planning.Exercises;

/// <summary>How hard the landings of a jump are.</summary>
public enum Impact
{
    /// <summary>No landing to speak of.</summary>
    None,

    /// <summary>Low: pogo jumps, box jumps landed high.</summary>
    Low,

    /// <summary>Middle: jumps in place, low hurdles.</summary>
    Middle,

    /// <summary>High: depth jumps, single-leg bounds, high hurdles.</summary>
    High,
}

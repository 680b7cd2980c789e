namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>The 505 and its relative.</summary>
public enum TurnTest
{
    /// <summary>505: run up 10 m to the gate, 5 m on to the line, half a turn, 5 m back to the gate; the 10 m from gate to gate are timed [nimphius2016].</summary>
    FiveOhFive,

    /// <summary>Modified 505: standing start at the gate, 5 m to the line, half a turn, 5 m back. Its times are not comparable with the 505's. Common practice, no source.</summary>
    ModifiedFiveOhFive,
}

namespace Analytics.Metrics.Load;

/// <summary>What is counted as the dose of training.</summary>
public enum DoseMeasure
{
    /// <summary>Sessions.</summary>
    Sessions,

    /// <summary>Minutes of all sessions.</summary>
    Minutes,

    /// <summary>Sum of the session loads, AU.</summary>
    SessionLoad,

    /// <summary>Volume-load of all lifts, kg.</summary>
    VolumeLoad,

    /// <summary>Ground contacts of jumps.</summary>
    JumpContacts,
}

/// <summary>Words and units of the measures.</summary>
public static class DoseMeasures
{
    /// <summary>What it is, in words.</summary>
    /// <param name="measure">The measure.</param>
    public static string Name(this DoseMeasure measure) => measure switch
    {
        DoseMeasure.Sessions => "sessions",
        DoseMeasure.Minutes => "minutes",
        DoseMeasure.SessionLoad => "session load",
        DoseMeasure.VolumeLoad => "volume-load",
        DoseMeasure.JumpContacts => "jump contacts",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Unknown measure of the dose."),
    };

    /// <summary>Its unit; empty for a count.</summary>
    /// <param name="measure">The measure.</param>
    public static string Unit(this DoseMeasure measure) => measure switch
    {
        DoseMeasure.Minutes => "min",
        DoseMeasure.SessionLoad => "AU",
        DoseMeasure.VolumeLoad => "kg",
        _ => string.Empty,
    };
}

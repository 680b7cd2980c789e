namespace Analytics.Simulation.ErrorRates.Grid.Tables;

/// <summary>What test errors are like. In every kind the squad's typical error is near 1 and the mean near 20, that is about 5 %.</summary>
public enum ErrorKind
{
    /// <summary>Normal, the same for everybody.</summary>
    Normal,

    /// <summary>Skewed to the right: log-normal of shape 0.5, skewness 1.75.</summary>
    Skewed,

    /// <summary>A share of the value: every value is log-normal.</summary>
    Proportional,

    /// <summary>Neighbouring trials of an athlete correlate by 0.4; a later change is far from the retest and does not.</summary>
    Serial,

    /// <summary>Athletes have errors of their own, log-normal of shape 0.4 about the squad's.</summary>
    Uneven,

    /// <summary>Normal, and each trial shifts everybody by a common amount, SD half a typical error.</summary>
    CommonShift,
}

/// <summary>Names of the kinds.</summary>
public static class ErrorKinds
{
    public static IReadOnlyList<ErrorKind> All { get; } = Enum.GetValues<ErrorKind>();

    public static string Words(this ErrorKind kind) => kind switch
    {
        ErrorKind.Normal => "normal",
        ErrorKind.Skewed => "skewed",
        ErrorKind.Proportional => "grows with the value",
        ErrorKind.Serial => "neighbours correlate",
        ErrorKind.Uneven => "differs between athletes",
        ErrorKind.CommonShift => "common shift each trial",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind."),
    };
}

namespace Analytics.Statistics.Reliability;

/// <summary>
/// The six intraclass correlations. Two naming schemes are in use; both are given. They differ in what counts as error
/// and in whether one trial or the mean of k is to be used later.
/// </summary>
public enum IccForm
{
    /// <summary>One-way random, single measure: ICC(1,1) [shroutfleiss1979], ICC(1) [mcgrawwong1996].</summary>
    OneWaySingle,

    /// <summary>Absolute agreement, single measure: ICC(2,1) [shroutfleiss1979], ICC(A,1) [mcgrawwong1996].</summary>
    AgreementSingle,

    /// <summary>Consistency, single measure: ICC(3,1) [shroutfleiss1979], ICC(C,1) [mcgrawwong1996].</summary>
    ConsistencySingle,

    /// <summary>One-way random, mean of k: ICC(1,k), ICC(k).</summary>
    OneWayMean,

    /// <summary>Absolute agreement, mean of k: ICC(2,k), ICC(A,k).</summary>
    AgreementMean,

    /// <summary>Consistency, mean of k: ICC(3,k), ICC(C,k).</summary>
    ConsistencyMean,
}

/// <summary>Names of the forms in the literature.</summary>
public static class IccForms
{
    /// <summary>Name after Shrout and Fleiss [shroutfleiss1979], such as "ICC(3,1)".</summary>
    /// <param name="form">Which of the six.</param>
    public static string ShroutFleissName(this IccForm form) => form switch
    {
        IccForm.OneWaySingle => "ICC(1,1)",
        IccForm.AgreementSingle => "ICC(2,1)",
        IccForm.ConsistencySingle => "ICC(3,1)",
        IccForm.OneWayMean => "ICC(1,k)",
        IccForm.AgreementMean => "ICC(2,k)",
        IccForm.ConsistencyMean => "ICC(3,k)",
        _ => throw Unknown(form),
    };

    /// <summary>Name after McGraw and Wong [mcgrawwong1996], such as "ICC(C,1)".</summary>
    /// <param name="form">Which of the six.</param>
    public static string McGrawWongName(this IccForm form) => form switch
    {
        IccForm.OneWaySingle => "ICC(1)",
        IccForm.AgreementSingle => "ICC(A,1)",
        IccForm.ConsistencySingle => "ICC(C,1)",
        IccForm.OneWayMean => "ICC(k)",
        IccForm.AgreementMean => "ICC(A,k)",
        IccForm.ConsistencyMean => "ICC(C,k)",
        _ => throw Unknown(form),
    };

    /// <summary>Whether the form speaks of the mean of k trials.</summary>
    /// <param name="form">Which of the six.</param>
    public static bool IsOfMean(this IccForm form) => form is IccForm.OneWayMean or IccForm.AgreementMean or IccForm.ConsistencyMean;

    /// <summary>Whether the form has no place for a shift common to a trial: one-way.</summary>
    internal static bool IsOneWay(this IccForm form) => form is IccForm.OneWaySingle or IccForm.OneWayMean;

    /// <summary>Whether the form counts a shift common to a trial as error.</summary>
    internal static bool IsAgreement(this IccForm form) => form is IccForm.AgreementSingle or IccForm.AgreementMean;

    internal static ArgumentOutOfRangeException Unknown(IccForm form) => new(nameof(form), form, $"{form} is not one of the six forms.");
}

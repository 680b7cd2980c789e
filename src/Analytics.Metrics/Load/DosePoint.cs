namespace Analytics.Metrics.Load;

/// <summary>One athlete's dose and change.</summary>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Dose">What he did.</param>
/// <param name="Change">How he changed.</param>
/// <param name="ChangeError">Standard error of the change from the test's typical error, in its unit; null when no error is known.</param>
public sealed record DosePoint(string AthleteId, double Dose, double Change, double? ChangeError = null);

/// <summary>What is set against what: the labels of a pair.</summary>
/// <param name="Dose">Dose in words: "session load".</param>
/// <param name="DoseUnit">Its unit; empty for a count.</param>
/// <param name="Change">Change in words: "back squat, change".</param>
/// <param name="ChangeUnit">Its unit.</param>
public sealed record DosePair(string Dose, string DoseUnit, string Change, string ChangeUnit)
{
    /// <summary>Both, in words.</summary>
    public override string ToString() => $"{Dose} and {Change}";
}

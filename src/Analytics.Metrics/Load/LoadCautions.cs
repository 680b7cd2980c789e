namespace Analytics.Metrics.Load;

/// <summary>What is said with every figure of load and dose, word for word the same everywhere.</summary>
public static class LoadCautions
{
    /// <summary>Of load, monotony and strain.</summary>
    public const string NoPredictor =
        "Load, monotony and strain predict no injury and clear nobody to play; medical decisions and local rules come first.";

    /// <summary>Of a dose set against a change.</summary>
    public const string Description =
        "This describes who did more and who changed. It does not show that one made the other: nobody drew the dose by lot, and whoever is healthy, keen or new to training may both train more and gain more. It predicts no injury.";

    /// <summary>Monotony often quoted as a prompt to look at a week [foster1998]; the figure is from memory.</summary>
    public const double MonotonyReference = 2.0;

    /// <summary>What the reference value is and is not.</summary>
    public const string MonotonyRemark =
        "A monotony above 2.0 is often quoted as a reason to look at a week again [foster1998; from memory, SD choice not stated there]. It is no limit and no predictor of injury.";
}

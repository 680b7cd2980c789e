namespace Analytics.Metrics.Strength;

/// <summary>Regressions from a five-repetition maximum (5RM) of one lift, in kg, and from nothing else.</summary>
public static class FiveRepMaxFormulas
{
    /// <summary>Reynolds, Gordon and Robergs 2006: free bench press, from a five-repetition maximum only.</summary>
    public static OneRepMaxFormula BenchPress { get; } = new()
    {
        Name = "Reynolds et al. bench press 5RM",
        Expression = "1.1307 w + 0.6999 kg, w the 5RM in kg",
        SourceKey = "reynolds2006",
        Population = "34 men and 36 women, 18–69 years",
        ValidRange = new(5, 5),
        Evidence = "printed, R² 0.993, standard error of estimate 2.98 kg",
        OnlyLift = Lifts.BenchPress,
        RangeIsStrict = true,
        Equation = (w, _) => 1.1307 * w + 0.6999,
    };

    /// <summary>Reynolds, Gordon and Robergs 2006: plate-loaded leg press, from a five-repetition maximum only.</summary>
    public static OneRepMaxFormula LegPress { get; } = new()
    {
        Name = "Reynolds et al. leg press 5RM",
        Expression = "1.0970 w + 14.2546 kg, w the 5RM in kg",
        SourceKey = "reynolds2006",
        Population = "34 men and 36 women, 18–69 years",
        ValidRange = new(5, 5),
        Evidence = "printed, R² 0.974, standard error of estimate 16.16 kg",
        OnlyLift = Lifts.LegPress,
        RangeIsStrict = true,
        Equation = (w, _) => 1.0970 * w + 14.2546,
    };
}

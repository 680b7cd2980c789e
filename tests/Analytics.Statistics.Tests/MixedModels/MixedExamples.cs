using Analytics.Statistics.MixedModels;

namespace Analytics.Statistics.Tests.MixedModels;

/// <summary>The example data of tests/oracles/statistics as designs.</summary>
internal static class MixedExamples
{
    public static ModelDesign Dyestuff()
    {
        var rows = Oracle.Rows("mixed-dyestuff.csv").ToList();
        return ModelDesign.Of(Numbers(rows, 1), Texts(rows, 0), "yield", "batch").RandomIntercept();
    }

    /// <summary>Reaction ~ Days without random effects yet.</summary>
    public static ModelDesign Sleep()
    {
        var rows = Oracle.Rows("mixed-sleepstudy.csv").ToList();
        return ModelDesign.Of(Numbers(rows, 0), Texts(rows, 2), "reaction time", "subject").Covariate("Days", Numbers(rows, 1));
    }

    public static ModelDesign SleepIntercept() => Sleep().RandomIntercept();

    public static ModelDesign SleepSlope() => SleepIntercept().RandomSlope("Days");

    /// <summary>distance ~ age × sex.</summary>
    public static ModelDesign Orthodont()
    {
        var rows = Oracle.Rows("mixed-orthodont.csv").ToList();
        return ModelDesign.Of(Numbers(rows, 0), Texts(rows, 2), "distance", "child")
            .Covariate("age", Numbers(rows, 1)).Factor("Sex", Texts(rows, 3), "Male").Interaction("age", "Sex").RandomIntercept();
    }

    /// <summary>y ~ position × day.</summary>
    public static ModelDesign Unbalanced()
    {
        var (design, rows) = UnbalancedStart();
        return design.Factor("position", Texts(rows, 1), "line").Covariate("day", Numbers(rows, 2)).Interaction("position", "day").RandomIntercept();
    }

    /// <summary>y ~ position + day + mass, intercept and slope.</summary>
    public static ModelDesign UnbalancedSlope()
    {
        var (design, rows) = UnbalancedStart();
        return design.Factor("position", Texts(rows, 1), "line").Covariate("day", Numbers(rows, 2)).Covariate("mass", Numbers(rows, 3))
            .RandomIntercept().RandomSlope("day");
    }

    public static ModelDesign UnbalancedOnly() => UnbalancedStart().Design.RandomIntercept();

    public static ModelDesign Boundary() => AthleteDay("mixed-boundary.csv").RandomIntercept();

    public static ModelDesign BoundarySlope() => AthleteDay("mixed-slopes.csv").RandomIntercept().RandomSlope("day");

    public static ModelDesign Many() => AthleteDay("mixed-many.csv").RandomIntercept().RandomSlope("day");

    public static ModelDesign Quadratic()
    {
        var rows = Oracle.Rows("mixed-quadratic.csv").ToList();
        return ModelDesign.Of(Numbers(rows, 3), Texts(rows, 0), "y", "athlete").Covariate("day", Numbers(rows, 1)).Covariate("day2", Numbers(rows, 2))
            .RandomIntercept().RandomSlope("day").RandomSlope("day2");
    }

    public static double[] Numbers(IEnumerable<string[]> rows, int column) => [.. rows.Select(r => Oracle.Number(r[column]))];

    public static string[] Texts(IEnumerable<string[]> rows, int column) => [.. rows.Select(r => r[column])];

    private static (ModelDesign Design, List<string[]> Rows) UnbalancedStart()
    {
        var rows = Oracle.Rows("mixed-unbalanced.csv").ToList();
        return (ModelDesign.Of(Numbers(rows, 4), Texts(rows, 0), "y", "athlete"), rows);
    }

    private static ModelDesign AthleteDay(string file)
    {
        var rows = Oracle.Rows(file).ToList();
        return ModelDesign.Of(Numbers(rows, 2), Texts(rows, 0), "y", "athlete").Covariate("day", Numbers(rows, 1));
    }
}

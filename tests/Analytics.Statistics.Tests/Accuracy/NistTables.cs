using System.Globalization;
using Analytics.Statistics.Fitting;
using Analytics.Statistics.Tests.Fitting;
using static Analytics.Statistics.Tests.Accuracy.AccuracyDigits;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>The two tables on certified reference sets.</summary>
internal static class NistTables
{
    private static readonly string[] s_sets = ["michelso", "mavro", "lew", "numacc1", "numacc2", "numacc3", "numacc4"];

    public static string Univariate()
    {
        var checks = AccuracyTests.BookOf("1").Checks.ToLookup(c => c.Row.Case);
        return MarkdownTable.Of(["set", "n", "mean", "SD", "r1", "what limits it"], s_sets.Select(set =>
        {
            double Of(string quantity) => checks[set].Single(c => c.Row.Quantity == quantity).Digits;
            var n = checks[set].Single(c => c.Row.Quantity == "n").Row.Value;
            string[] row = [set, n.ToString("0", CultureInfo.InvariantCulture), AtLeast(Of("mean")), AtLeast(Of("sd")), AtLeast(Of("r1")), Limit(set)];
            return (IReadOnlyList<string>)row;
        }));
    }

    public static string Curves() => MarkdownTable.Of(["set", "points", "parameters", "start", "parameters agree", "SDs agree", "residual SD agrees", "steps", "how it ended"],
        from name in NistSet.Names
        from start in new[] { 1, 2 }
        select (IReadOnlyList<string>)Row(new NistSet(name), start));

    private static string[] Row(NistSet set, int start)
    {
        var fit = set.Fit(set.Start(start));
        double Least(IEnumerable<double>? actual, string column) => actual is null ? 0
            : set.Parameters.Zip(actual, (p, a) => Digits(p[column], a)).Min();
        return
        [
            set.Name, Whole(fit.N), Whole(fit.Parameters.Count), Whole(start),
            AtLeast(Least(fit.Parameters, "certified_value")), AtLeast(Least(fit.StandardErrors, "certified_sd")),
            AtLeast(fit.ResidualSd is { } sd ? Digits(set.Whole["certified_residual_sd"], sd) : 0),
            About(fit.Iterations), fit.IsSolution ? FitEnding.Converged.InWords() : fit.Ending.InWords(),
        ];
    }

    // Eleven digits are certified: agreement beyond them is luck.
    private static double Digits(double certified, double actual)
        => Math.Min(11, new AccuracyCheck(new("", "", certified, ""), actual, 0, 0, "").Digits);

    private static string Limit(string set) => set switch
    {
        "numacc1" => "nothing: whole numbers are exact",
        "numacc3" or "numacc4" => "the decimals: beside seven or eight digits before the point a double holds eight or nine of the SD's digits",
        _ => "the decimals of the data are not exact in binary",
    };

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}

using Analytics.Statistics.Change;
using Analytics.Statistics.EffectSize;
using Analytics.Statistics.Multiplicity;
using Analytics.Statistics.Results;
using Analytics.Statistics.Shrinkage;

namespace Analytics.Statistics.Tests.Change;

/// <summary>Every result of these folders prints its figures, its method and what it rests on.</summary>
public class ResultSheetsTests
{
    private static readonly IndividualChange s_change = IndividualChange.Between(140, 149, 3.2, 21);
    private static readonly double[] s_values = [28, 8, -3, 7, -1, 1, 18, 12], s_errors = [15, 10, 16, 11, 9, 11, 10, 18];

    private static readonly Result[] s_results =
    [
        s_change, MeanChange.Of([1, 2, 4]), MeanChange.Of([1]), SmallestWorthwhileChange.OfTrueSpread(5, 2), SmallestWorthwhileChange.OfTrueSpread(1, 2),
        ChangeTests.Of(s_change, 2), s_change.Shares(2), ChangePrior.Stated(0, 4, "set by the coach"), ChangePosterior.Of(9, 3, 0, 4),
        ChangePosterior.Of(s_change, ChangePrior.Stated(0, 4, "set by the coach")).Shares(2), IndividualResponses.Between(6, 20, 4, 20), ResponderShares.Of(2.5, 4, 1),
        ReliableChangeIndex.Of(47.5, 32.5, 7.5, 0.8), LogNormalLimits.Of(5), ResponseWidths.Of(), SelectionEffect.OfTop(0.25, 0.8),
        GroupDifference.Between([1, 2, 3], [2, 3, 5]), PairedDifference.Between([1, 2, 3], [2, 3, 5]), WelchTest.Between([1, 2, 3], [2, 3, 5]),
        ChanceFlags.OfSquad(60, 12, 0.05), AdjustedPValues.Of([0.01, 0.2], Adjustment.Holm),
        EmpiricalBayes.Of(s_values, s_errors), MorrisShrinkage.Of(s_values, s_errors), JamesStein.Of(s_values, 100), Shrunken.Toward(3, 1, 0, 4),
    ];

    public static TheoryData<int> Every => [.. Enumerable.Range(0, s_results.Length)];

    [Theory]
    [MemberData(nameof(Every))]
    public void Sheet_SaysWhatHowAndFromWhat(int index)
    {
        var sheet = s_results[index].Sheet();
        Assert.All([sheet.Title, sheet.Method, sheet.Basis], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.NotEmpty(sheet.Lines);
        // A figure is a number, or says why there is none.
        Assert.All(sheet.Lines, l => Assert.True(l.Value is { } v ? !double.IsNaN(v) : l.Note.Length > 0, l.Name));
        Assert.Contains(sheet.Title, s_results[index].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_result_type_of_the_folders_is_among_them()
    {
        string[] folders = ["Change", "EffectSize", "Multiplicity", "Shrinkage"];
        var types = typeof(Result).Assembly.GetExportedTypes()
            .Where(t => t.IsSubclassOf(typeof(Result)) && folders.Contains(t.Namespace!.Split('.')[^1], StringComparer.Ordinal));
        Assert.Empty(types.Except(s_results.Select(r => r.GetType())));
    }
}

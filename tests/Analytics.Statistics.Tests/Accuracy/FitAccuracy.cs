using Analytics.Statistics.Tests.Fitting;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>NIST non-linear regression sets from both starts. Eleven digits are certified.</summary>
public sealed class FitAccuracy : AccuracySection
{
    private const string Source = "certified by NIST to 11 digits [niststrd]";

    public override string Section => "fits";

    public override string Title => "Curve fits";

    public override void Fill(AccuracyBook book)
    {
        foreach (var name in NistSet.Names)
            for (var start = 1; start <= 2; start++) Fill(book, new NistSet(name), start);
    }

    private static void Fill(AccuracyBook book, NistSet set, int start)
    {
        var (fit, at) = (set.Fit(set.Start(start)), $"{set.Name} from start {start}");
        book.CheckPublished(at, "residual sum of squares", set.Whole["certified_rss"], fit.Rss!.Value, AccuracyBook.Usual, Source);
        book.CheckPublished(at, "residual SD", set.Whole["certified_residual_sd"], fit.ResidualSd!.Value, AccuracyBook.Usual, Source);
        for (var j = 0; j < set.Parameters.Count; j++)
        {
            var certified = set.Parameters[j];
            book.CheckPublished(at, certified.Text("parameter"), certified["certified_value"], fit.Parameters[j], AccuracyBook.Usual, Source);
            book.CheckPublished(at, $"SD of {certified.Text("parameter")}", certified["certified_sd"], fit.StandardErrors![j], AccuracyBook.Usual, Source);
        }
    }
}

using Analytics.Statistics.Summaries;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>Quantile types, percentile ranks, hinges.</summary>
public sealed class PercentileAccuracy : AccuracySection
{
    internal static readonly double[] Values = [12.1, 15.3, 9.8, 20.4, 17.7, 11.2, 14.9, 13.3, 18.6, 10.5];

    public override string Section => "15";

    public override string Title => "Percentiles";

    public override void Fill(AccuracyBook book)
    {
        foreach (var type in Enum.GetValues<QuantileType>())
            foreach (var p in new[] { 0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95, 0.333 })
                book.Check($"type{(int)type}", FormattableString.Invariant($"p{p}"), Quantiles.Of(Values, p, type), 1e-14);

        Rank("below/n", RankDefinition.ShareBelow);
        Rank("(below+.5eq)/n", RankDefinition.ShareBelowAndHalfEqual);
        Rank("(below)/(n-1)", RankDefinition.ShareOfOthersBelow);
        foreach (var p in new[] { 0.25, 0.5, 0.9 })
            book.Check("harrell_davis", FormattableString.Invariant($"p{p}"), HarrellDavis.Of(Values, p), 1e-12);

        var (summary, five) = (Summary.Of(Values), TukeyHinges.Of(Values));
        book.Check("iqr_five", "IQR_type7", summary.UpperQuartile - summary.LowerQuartile, 1e-14);
        book.Check("iqr_five", "fivenum1", five.Minimum, 1e-14);
        book.Check("iqr_five", "fivenum2", five.LowerHinge, 1e-14);
        book.Check("iqr_five", "fivenum3", five.Median, 1e-14);
        book.Check("iqr_five", "fivenum4", five.UpperHinge, 1e-14);
        book.Check("iqr_five", "fivenum5", five.Maximum, 1e-14);

        void Rank(string quantity, RankDefinition definition) => book.Check("prc_rank_of_14.9", quantity, PercentileRank.Of(Values, 14.9, definition).Share, 1e-14);
    }
}

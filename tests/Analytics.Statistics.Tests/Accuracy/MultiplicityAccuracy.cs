using Analytics.Statistics.Multiplicity;

namespace Analytics.Statistics.Tests.Accuracy;

/// <summary>The 15 p values of [benjaminihochberg1995] and R's p.adjust of them.</summary>
public sealed class MultiplicityAccuracy : AccuracySection
{
    private const string File = "benjamini-hochberg-1995.csv";

    public override string Section => "12";

    public override string Title => "Many tests at once";

    public override void Fill(AccuracyBook book)
    {
        var p = Oracle.Column(File, 1);
        Adjustment[] methods = [Adjustment.Bonferroni, Adjustment.Holm, Adjustment.Hochberg, Adjustment.BenjaminiHochberg, Adjustment.BenjaminiYekutieli];
        var by = methods.ToDictionary(m => m, m => AdjustedPValues.Of(p, m));
        book.Check("bh1995", "rej_bonf_.05", by[Adjustment.Bonferroni].Rejected());
        book.Check("bh1995", "rej_holm_.05", by[Adjustment.Holm].Rejected());
        book.Check("bh1995", "rej_hochberg_.05", by[Adjustment.Hochberg].Rejected());
        book.Check("bh1995", "rej_BH_.05", by[Adjustment.BenjaminiHochberg].Rejected());
        book.Check("bh1995", "rej_BH_.10", by[Adjustment.BenjaminiHochberg].Rejected(0.1));
        book.Check("bh1995", "rej_BY_.05", by[Adjustment.BenjaminiYekutieli].Rejected());
        book.Check("bh1995", "BH_adj_p4", by[Adjustment.BenjaminiHochberg].Adjusted[3], 1e-12);
        book.Check("bh1995", "BH_adj_p5", by[Adjustment.BenjaminiHochberg].Adjusted[4], 1e-12);
        book.Check("bh1995", "holm_adj_p4", by[Adjustment.Holm].Adjusted[3], 1e-12);
        for (var m = 0; m < methods.Length; m++)
        {
            var expected = Oracle.Column(File, m + 2);
            for (var i = 0; i < p.Length; i++)
                book.CheckPublished($"{File} {methods[m]}", FormattableString.Invariant($"p{i + 1}"), expected[i], by[methods[m]].Adjusted[i], 1e-11, "R 4.2.2: p.adjust");
        }
    }
}

using Analytics.Metrics.Motion;

namespace Analytics.Metrics.Tests.Motion.Body;

public class SegmentTableTests
{
    [Fact]
    public void Dempster_Rows_AreThePublishedTable()
    {
        var rows = OracleTable.Read("motion/segments_dempster.csv");
        Assert.Equal(rows.Select(r => r.Text("segment")), SegmentTable.Dempster.Rows.Select(r => r.Name));
        foreach (var row in rows)
        {
            var ours = SegmentTable.Dempster[row.Text("segment")];
            Assert.Equal((row["mass_fraction"], row["com_from_proximal"]), (ours.MassFraction, ours.CentreFromFirst));
            Assert.Equal(row.Text("rg_about_com") is "" ? null : row["rg_about_com"], ours.GyrationAboutCentre);
        }
    }

    [Theory]
    [InlineData("male")]
    [InlineData("female")]
    public void DeLeva_Rows_AreThePublishedTable(string sex)
    {
        var table = sex == "male" ? SegmentTable.DeLevaMale : SegmentTable.DeLevaFemale;
        var rows = OracleTable.Read("motion/segments_deleva.csv");
        Assert.Equal(rows.Select(r => r.Text("segment")), table.Rows.Select(r => r.Name));
        foreach (var row in rows)
        {
            var ours = table[row.Text("segment")];
            Assert.Equal((row[$"{sex}_mass_fraction"], row[$"{sex}_com_from_first_endpoint"]), (ours.MassFraction, ours.CentreFromFirst));
            Assert.Equal(row[$"{sex}_rg_sagittal"], ours.GyrationAboutCentre);
        }
    }

    // Sums of the printed fractions.
    [Fact]
    public void WholeBody_Sums_AreThoseOfPrint()
    {
        Assert.Equal(1, SegmentTable.Dempster.WholeBody, 1e-12);
        Assert.Equal(1, SegmentTable.DeLevaMale.WholeBody, 1e-12);
        Assert.Equal(0.9999, SegmentTable.DeLevaFemale.WholeBody, 1e-12);
    }

    [Fact]
    public void Indexer_Unknown_ListsTheSegments()
        => Assert.Contains("no segment 'Shin'; it has: Hand, Forearm", Assert.Throws<KeyNotFoundException>(() => SegmentTable.Dempster["Shin"]).Message, StringComparison.Ordinal);
}

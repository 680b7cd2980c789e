using Analytics.Metrics.Load;

namespace Analytics.Metrics.Tests.Load;

/// <summary>Doses against changes, held against SciPy (tests/oracles/load/dose-change.csv).</summary>
public class DoseAgainstChangeTests
{
    private static readonly DosePair Pair = new("session load", "AU", "back squat, change", "kg");

    private static readonly double[] Dose = [5200, 6100, 6100, 7050, 4800, 8200, 7600, 6900, 5900, 7050, 8800, 6400];

    private static readonly double[] Change = [2.5, 6.0, -1.5, 9.0, 4.0, 7.5, 3.0, 11.5, 0.5, 5.0, 8.5, 2.0];

    [Fact]
    public void Of_TwelveAthletes_AgreesWithSciPy()
    {
        var oracle = OracleTable.Read("load/dose-change.csv").ToDictionary(r => r.Text("quantity"), r => r["value"]);
        var result = DoseAgainstChange.Of(Pair, Points(Dose, Change, 2.0));
        Assert.Null(result.NotComputable);
        Assert.Equal(oracle["rho"], result.Rank!.Value, 1e-12);
        Assert.Equal(oracle["p"], result.Rank.P!.Value, 1e-10);
        Assert.Equal(oracle["slope"], result.Slope!.Slope, 1e-12);
        Assert.Equal(oracle["slope_low"], result.Slope.Interval!.Value.Low, 1e-12);
        Assert.Equal(oracle["slope_high"], result.Slope.Interval!.Value.High, 1e-12);
        Assert.Equal(oracle["dose_quartile_range"], result.DoseSpread!.Value, 1e-9);
        // 2²/14.560606.
        Assert.Equal(4 / oracle["variance_of_change"], result.ErrorShare!.Value, 1e-12);
    }

    [Fact]
    public void Sheet_Always_SaysWhatItIsNot()
    {
        foreach (var result in new[] { DoseAgainstChange.Of(Pair, Points(Dose, Change, 2.0)), DoseAgainstChange.Of(Pair, []) })
        {
            Assert.Contains("does not show that one made the other", result.ToString(), StringComparison.Ordinal);
            Assert.Contains("predicts no injury", result.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Of_TooFewEqualDosesOrEqualChanges_IsWorded()
    {
        Assert.Equal("not computable: 7 athletes have both dose and change; at least 8 are needed", DoseAgainstChange.Of(Pair, Points(Dose[..7], Change[..7])).NotComputable);
        Assert.Equal("not computable: all 12 athletes have the same dose, 5200 AU", DoseAgainstChange.Of(Pair, Points([.. Dose.Select(_ => 5200.0)], Change)).NotComputable);
        Assert.Equal("not computable: all 12 athletes changed by the same, 5 kg", DoseAgainstChange.Of(Pair, Points(Dose, [.. Change.Select(_ => 5.0)])).NotComputable);
    }

    [Fact]
    public void Of_ErrorsAsLargeAsTheScatter_SayThatNothingCanBeSeen()
    {
        Assert.Contains("no relation could be seen", DoseAgainstChange.Of(Pair, Points(Dose, Change, 4.0)).ToString(), StringComparison.Ordinal);
        Assert.Contains("More than half of the scatter", DoseAgainstChange.Of(Pair, Points(Dose, Change, 3.0)).ToString(), StringComparison.Ordinal);
        var unknown = DoseAgainstChange.Of(Pair, Points(Dose, Change));
        Assert.Null(unknown.ErrorShare);
        Assert.Contains("no error known", unknown.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_BadPoints_AreRefused()
    {
        Assert.Contains("stands in two points", Assert.Throws<ArgumentException>(() => DoseAgainstChange.Of(Pair, [new("P1", 1, 1), new("P1", 2, 2)])).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => DoseAgainstChange.Of(Pair, [new("P1", double.NaN, 1)]));
        Assert.Throws<ArgumentException>(() => DoseAgainstChange.Of(Pair, [new("P1", 1, 1, 0)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => DoseAgainstChange.Of(Pair, Points(Dose, Change), 1));
    }

    // Holm on three p values: the smallest times 3, the next times 2, never falling; the pair without figure counts no look.
    [Fact]
    public void Looks_AllPairs_AreShownAndCorrected()
    {
        double[] mirrored = [.. Change.Reverse()];
        DoseAgainstChange[] pairs =
        [
            DoseAgainstChange.Of(Pair, Points(Dose, mirrored)), DoseAgainstChange.Of(Pair with { Dose = "minutes" }, []), DoseAgainstChange.Of(Pair, Points(Dose, Change)),
            DoseAgainstChange.Of(Pair with { Dose = "sessions" }, Points(Dose, Dose)),
        ];
        var looks = DoseLooks.Of(pairs);
        Assert.Equal((4, 3), (looks.Pairs.Count, looks.Looks));
        Assert.Null(looks.AdjustedP[1]);
        Assert.Equal(0, looks.AdjustedP[3]!.Value, 12);
        Assert.Equal(2 * 0.06757039826125938, looks.AdjustedP[2]!.Value, 10);
        Assert.Equal(pairs[0].Rank!.P!.Value, looks.AdjustedP[0]!.Value, 12);
        var text = looks.ToString();
        Assert.Contains("corrected 0.1351", text, StringComparison.Ordinal);
        Assert.Contains("minutes and back squat, change", text, StringComparison.Ordinal);
        Assert.Contains("not computable: 0 athletes have", text, StringComparison.Ordinal);
        Assert.Contains("0.2 of 3 pairs would have a raw p of at most 0.05", text, StringComparison.Ordinal);
        Assert.Contains("nothing to look at", DoseLooks.Of([]).ToString(), StringComparison.Ordinal);
    }

    private static IEnumerable<DosePoint> Points(double[] dose, double[] change, double? error = null) => dose.Zip(change, (d, c) => (d, c)).Select((p, i) => new DosePoint($"P{i:000}", p.d, p.c, error));
}

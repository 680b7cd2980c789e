using Analytics.Metrics.Sprinting.Fits;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sprinting.Fits;

/// <summary>
/// 100 m races: 10 m splits as printed (sources in tests/oracles/sprint/race_splits.csv) and their least-squares fits
/// (race_fits.csv, 50-digit arithmetic, cross-checked with SciPy curve_fit and R nls).
/// Splits marked "from memory" there still test the arithmetic: the fits belong to the numbers as typed.
/// </summary>
public class RaceFitTests
{
    public static TheoryData<string, string, int, string> Cases()
    {
        var data = new TheoryData<string, string, int, string>();
        foreach (var row in OracleTable.Read("sprint/race_fits.csv"))
            data.Add(row.Text("race"), row.Text("athlete"), (int)row["last_distance_m"], row.Text("model"));
        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Fit_PublishedRace_GivesTheStatedParameters(string race, string athlete, int lastMetres, string model)
    {
        var expected = OracleTable.Read("sprint/race_fits.csv").Single(r
            => r.Text("race") == race && r.Text("athlete") == athlete && r["last_distance_m"] == lastMetres && r.Text("model") == model);

        var fit = SplitFitter.Fit(Splits(race, athlete, lastMetres, fromTheGun: model == "T3"),
            model == "T3" ? StartModel.Offset : StartModel.Still, model == "X2" ? SplitResponse.Distance : SplitResponse.Time);

        // Stated to 12 digits; 1e-7, 1e-5 and 1e-8 are what the oracle calls comfortable for double precision.
        Assert.Equal(SplitFitState.Fitted, fit.State);
        Assert.Equal(0, (fit.Curve!.TopSpeed.Value / expected["vmax_mps"]) - 1, 1e-7);
        Assert.Equal(0, (fit.Curve.TimeConstant.Value / expected["tau_s"]) - 1, 1e-7);
        Assert.Equal(0, (fit.Curve.TopSpeed.StandardError!.Value / expected["se_vmax"]) - 1, 1e-5);
        Assert.Equal(0, (fit.Curve.TimeConstant.StandardError!.Value / expected["se_tau"]) - 1, 1e-5);
        Assert.Equal(expected["rss"], fit.Numerics!.Rss!.Value, 1e-8);
        Assert.Equal(expected["resid_sd"], fit.Curve.ResidualSd!.Value, 1e-7);
        Assert.Equal(fit.N - (model == "T3" ? 3 : 2), fit.DegreesOfFreedom);
        if (model != "T3") return;
        Assert.Equal(expected["t0_s"], fit.Curve.Offset!.Value, 1e-7);
        Assert.Equal(0, (fit.Curve.Offset.StandardError!.Value / expected["se_t0"]) - 1, 1e-5);
    }

    private static IReadOnlyList<Split> Splits(string race, string athlete, int lastMetres, bool fromTheGun)
    {
        var row = OracleTable.Read("sprint/race_splits.csv").Single(r => r.Text("race") == race && r.Text("athlete") == athlete);
        var reaction = fromTheGun ? 0 : row["reaction_s"];
        return [.. Enumerable.Range(1, lastMetres / 10).Select(i
            => new Split(Length.FromMetres(10 * i), Duration.FromSeconds(row[$"t{10 * i}m_s"] - reaction)))];
    }
}

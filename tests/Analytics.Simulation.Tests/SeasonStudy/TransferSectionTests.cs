using Analytics.Simulation.ErrorRates;
using Analytics.Simulation.SeasonStudy.Transfer;

namespace Analytics.Simulation.Tests.SeasonStudy;

public class TransferSectionTests
{
    [Fact]
    public void Section_CountsEveryWatchedPair_AndSeesAPlantedLink()
    {
        var section = new TransferSection();
        var (none, planted) = (section.Scenarios[0], section.Scenarios.First(s => s.Name == "links 0.6, gains only, nothing missing, retest at the end"));
        for (var i = 0; i < 4; i++)
        {
            section.Add(none, SeasonChain.Run(i, (ulong)(40 + i), none.Options));
            section.Add(planted, SeasonChain.Run(i, (ulong)(40 + i), planted.Options));
        }

        Assert.All(section.Of(none).Values, c => Assert.Equal(4, c.Found.Asked));
        var (without, with) = (section.Of(none)[("power_clean_1rm", "cmj_height")], section.Of(planted)[("power_clean_1rm", "cmj_height")]);
        // True correlations over 4 × 60 players: standard error about 0.065 and 0.04.
        Assert.InRange(without.True, -0.2, 0.2);
        Assert.InRange(with.True, 0.43, 0.73);
        Assert.True(with.Found.Held >= 2 && with.Told > 0.3);
        // The calendar alone makes the classic figure stand out whether or not anything is linked.
        Assert.True(without.Classic.Held >= 3);
        var text = section.Write();
        Assert.StartsWith("## Did weight-room gains reach the field", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", text, StringComparison.Ordinal);
    }
}

using Analytics.Metrics.FieldPower;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.FieldPower;

public class StairNormsTests
{
    // The same norms as other textbooks print them in watts; both forms from memory, and the books round differently: within 10 W.
    [Theory]
    [InlineData(0, 1108, 1470, 1840, 2197)]
    [InlineData(1, 1040, 1370, 1720, 2060)]
    [InlineData(2, 903, 1182, 1487, 1787)]
    [InlineData(3, 834, 1090, 1379, 1648)]
    public void All_CutPointsInWatts_AgreeSoftly(int group, double fair, double average, double good, double excellent)
    {
        double[] watts = [fair, average, good, excellent];
        var cuts = StairNorms.All[group].CutPoints;
        for (var i = 0; i < 4; i++) Assert.InRange(cuts[i] * 9.81, watts[i] - 10, watts[i] + 10);
    }

    // Fox and Mathews 1974, men of 20 to 30 (from memory): under 106 poor, 106–139 fair, 140–175 average, 176–210 good, over 210 excellent.
    [Theory]
    [InlineData(105, StairBand.Poor)]
    [InlineData(106, StairBand.Fair)]
    [InlineData(139, StairBand.Fair)]
    [InlineData(140, StairBand.Average)]
    [InlineData(176, StairBand.Good)]
    [InlineData(210, StairBand.Good)]
    [InlineData(211, StairBand.Excellent)]
    public void Band_AtTheEdges_FollowsTheTable(double kilogramMetresPerSecond, StairBand band)
        => Assert.Equal(band, StairNorms.All[1].Band(Power.FromWatts(kilogramMetresPerSecond * 9.81)));
}

using Analytics.Metrics.Contact;

namespace Analytics.Metrics.Tests.Contact;

public class FrameAndNormalTests
{
    [Fact]
    public void The_ends_are_the_uniform_and_the_normal_law()
    {
        Assert.Equal(0.95, FrameAndNormal.Reach(1, 0, 0.95), 1e-9);
        Assert.Equal(1.959963984540054, FrameAndNormal.Reach(0, 1, 0.95), 1e-9);
    }

    // scipy.integrate of the normal law over the uniform one, solved by brentq.
    [Theory]
    [InlineData(1, 1, 2.254137083)]
    [InlineData(3, 1, 3.671113541)]
    [InlineData(1, 0.1, 0.981195074)]
    public void Between_them_the_sum(double halfWidth, double sd, double reach) => Assert.Equal(reach, FrameAndNormal.Reach(halfWidth, sd, 0.95), 1e-6);
}

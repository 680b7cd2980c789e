using Analytics.Notebooks.ContactReview;
using Analytics.Statistics;

namespace Analytics.Notebooks.Tests.ContactReview;

public class PlayerFigureTests
{
    // Spread within players: squares 0.02 + 0.08 over 2 df, so s² = 0.05; errors of reading 0.1, so ē = 0.01.
    [Fact]
    public void Mean_has_the_spread_of_its_repetitions()
    {
        var figure = Within([1.0, 1.2], [2.0, 2.4]).Mean([Read(1.0, 0.1), Read(1.2, 0.1)], shared: false);
        Assert.Equal(1.1, figure.Value, 1e-12);
        Assert.Equal(Math.Sqrt(0.05 / 2), figure.StandardError!.Value, 1e-12);
        Assert.Equal(2, figure.DegreesOfFreedom, 1e-9);
    }

    // An error of reading that all clips share is not averaged away: (0.05 − 0.01)/2 + 0.01.
    [Fact]
    public void A_shared_error_of_reading_stays()
        => Assert.Equal(Math.Sqrt(0.03), Within([1.0, 1.2], [2.0, 2.4]).Mean([Read(1.0, 0.1), Read(1.2, 0.1)], shared: true).StandardError!.Value, 1e-12);

    // s² = 0.0002 over 1 df is hardly in an error of reading of 0.1: Student's t with 1 df would make the interval 25 times too wide.
    [Fact]
    public void Degrees_of_freedom_count_what_is_estimated_only()
    {
        var figure = Within([2.10, 2.12]).Mean([Read(2.10, 0.1), Read(2.12, 0.1)], shared: true);
        Assert.Equal(0.1, figure.StandardError!.Value, 1e-12);
        Assert.Equal(Math.Pow(0.01 / 0.0001, 2), figure.DegreesOfFreedom, 1e-6);
        Assert.InRange(figure.Interval!.Value.High - figure.Value, 0.195, 0.2);
    }

    [Fact]
    public void Without_repetitions_the_error_of_reading_alone_is_known()
    {
        var figure = Within([1.0], [2.0]).Mean([Read(1.0, 0.1)], shared: false);
        Assert.Equal(0.1, figure.StandardError!.Value, 1e-12);
        Assert.Equal(double.PositiveInfinity, figure.DegreesOfFreedom);
    }

    [Fact]
    public void Without_any_error_none_is_shown() => Assert.Null(Within([1.0]).Mean([new(1.0, null, null, 1, "made up")], shared: false).Interval);

    private static WithinPlayers Within(params double[][] players) => WithinPlayers.Of(players.Select(p => (IReadOnlyList<Estimate>)[.. p.Select(v => Read(v, 0.1))]));

    private static Estimate Read(double value, double error) => new(value, error, new(value - error, value + error), 1, "made up");
}

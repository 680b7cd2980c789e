using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Seasons;

public class SeasonValuesTests
{
    [Fact]
    public void Of_TwoScales_ComparesTheOneMoreAthleteDaysShareAndListsTheOther()
    {
        IReadOnlyList<IReadOnlyList<AthleteDay>> days =
        [
            [Invented.Day("a1", Invented.March, Invented.Number(1, "hand")), Invented.Day("a2", Invented.March, Invented.Number(2, "gates"))],
            [Invented.Day("a1", Invented.April, Invented.Number(3, "gates"), Invented.Number(9, "hand")), Invented.Day("a2", Invented.April, Invented.Number(4, "gates"))],
        ];
        var values = SeasonValues.Of(Invented.Metric(), days);
        Assert.Equal("gates", values.Series);
        Assert.Equal([("a2", 2.0), ("a1", 3.0), ("a2", 4.0)], values.Values.Select(v => (v.AthleteId, v.Value)));
        Assert.Equal([("a1", 1.0, "measured by hand; most of the season by gates"), ("a1", 9.0, "measured by hand; most of the season by gates")],
            values.NotCompared.Select(n => (n.AthleteId, n.Value, n.Reason)));
        Assert.Equal([Invented.March, Invented.April], values.Dates);
    }

    // One day is the plain case, which MetricDay answers too.
    [Fact]
    public void Of_OneDay_AgreesWithMetricDay()
    {
        AthleteDay[] day = [Invented.Day("a1", 3, 5, 4), Invented.Day("a2", double.NaN, 2), Invented.Day("a3"), Invented.Day("a1", 7)];
        var (values, plain) = (SeasonValues.Of(Invented.Metric(), [day]), MetricDay.Of(Invented.Metric(), day));
        Assert.Equal(plain.Values.Select(v => (v.AthleteId, v.Value, v.Attempts.Count)), values.Values.Select(v => (v.AthleteId, v.Value, v.Attempts.Count)));
        Assert.Equal(plain.NotCompared, values.NotCompared);
        Assert.Equal(["a3"], values.WithoutValue);
        Assert.Equal(plain.WithoutValue, values.WithoutValue);
    }

    [Fact]
    public void Of_ManyDays_ReadsTheTrialsOfAnAthleteDayOnce()
    {
        var read = 0;
        var metric = Invented.Metric();
        var counting = metric with { FromTrials = day => { read++; return metric.FromTrials(day); } };
        var values = SeasonValues.Of(counting, Course.Weekly(50, _ => 0));
        Assert.Equal(50 * 24, read);
        Assert.Equal(50 * 24, values.Values.Count);
        Assert.Equal(50, values.Of("a7").Count);
    }

    [Fact]
    public void Of_DaysOutOfOrder_AreSortedByDate()
    {
        var values = SeasonValues.Of(Invented.Metric(), [.. Course.Days.Reverse()]);
        Assert.Equal([Course.Baseline, Course.Retest, Course.March, Course.June], values.Of("a5").Select(v => v.Date));
    }

    [Fact]
    public void Of_NoDays_IsEmpty()
    {
        var values = SeasonValues.Of(Invented.Metric(), []);
        Assert.Null(values.Series);
        Assert.Empty(values.Values);
        Assert.Empty(values.Of("a1"));
    }
}

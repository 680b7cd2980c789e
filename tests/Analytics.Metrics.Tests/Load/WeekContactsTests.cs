using Analytics.Metrics.Load;

namespace Analytics.Metrics.Tests.Load;

public class WeekContactsTests
{
    private static readonly DateOnly Monday = new(2026, 3, 2);

    [Fact]
    public void Of_Week_SumsItsSessions()
    {
        var week = WeekContacts.Of(Monday.AddDays(2), [new(Monday, JumpContacts: 24), new(Monday.AddDays(3), JumpContacts: 96), new(Monday.AddDays(5), JumpContacts: 0), new(Monday.AddDays(7), JumpContacts: 500)]);
        Assert.Equal((120, 3, 0, 96), (week.Total, week.Sessions, week.Uncounted, week.Most));
    }

    [Fact]
    public void Of_SessionWithoutCount_GivesALowerBound()
    {
        var week = WeekContacts.Of(Monday, [new(Monday, JumpContacts: 24), new(Monday.AddDays(3))]);
        Assert.Null(week.Total);
        Assert.Equal((24, 1), (week.Known, week.Uncounted));
        Assert.Contains("at least; 1 of 2 sessions without a count", week.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_EmptyWeek_HasNone() => Assert.Equal((0, 0, 0), (WeekContacts.Of(Monday, []).Total, WeekContacts.Of(Monday, []).Sessions, WeekContacts.Of(Monday, []).Most));

    // Textbook ranges of foot contacts a session, from memory.
    [Fact]
    public void Guide_LevelsFollowOneAnother()
        => Assert.Equal([(80, 100), (100, 120), (120, 140)], ContactGuide.All.Select(g => (g.Low, g.High)));
}

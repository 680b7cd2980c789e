using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Sharing;

/// <summary>Testers of a shared season are numbers; which of them is the same person still shows.</summary>
public sealed class SharedTesterTests : IDisposable
{
    private readonly TemporarySeason season = new TemporarySeason()
        .With("testing/2026-03-02/body.csv", "athlete_id,mass_lb,tester\nP001,221,zoe\nP002,222,Yan\nP003,223,\nP004,180,Ben Vale\n")
        .With("testing/2026-03-09/body.csv", "athlete_id,mass_lb,tester\nP001,221,yan\nP002,222,tester 1\nP003,223,ZOE\n");

    public void Dispose() => season.Dispose();

    [Fact]
    public void Open_Initials_NumbersTestersAsTheyFirstAppear()
        // A. S., B. V., C. R. and D. F. of each day in this order; zoe is 1, Yan 2, Ben Vale 3, and a tester who is called "tester 1" is another.
        => Assert.Equal(["tester 1", "tester 2", null, "tester 3", "tester 2", "tester 4", "tester 1"], Testers("initials"));

    [Fact]
    public void Open_Codes_TellsSameTestersAndNoMore()
    {
        var shown = Testers("codes");

        Assert.Equal(["tester 1", "tester 2", "tester 3", "tester 4"], shown.OfType<string>().Distinct().Order(StringComparer.Ordinal));
        // zoe and Yan took two each, Ben Vale and "tester 1" one each.
        Assert.Equal([1, 1, 2, 2], shown.OfType<string>().CountBy(t => t).Select(c => c.Value).Order());
        Assert.Equal("tester 1", shown.OfType<string>().First());
    }

    [Fact]
    public void Open_Names_KeepsTestersAsWritten()
        => Assert.Equal(["zoe", "Yan", null, "Ben Vale", "yan", "tester 1", "ZOE"], Testers("names"));

    private List<string?> Testers(string share) => [.. SeasonShelf.Open(season.Folder, share: share).Days.SelectMany(d => d.Athletes).SelectMany(a => a.Trials).Select(t => t.Tester)];
}

using Analytics.Cli.Commands;
using Analytics.Runner.Batches;
using Analytics.Runner.Outputs;

namespace Analytics.Cli.Tests.Commands;

public class BatchSummaryTests
{
    private static readonly BatchResult Good = new()
    {
        Ending = BatchEnding.Complete, Folder = "/out", Made = 2, AlreadyThere = 1, Failed = [], Left = [], OutOfDate = [], Took = TimeSpan.FromSeconds(1.23),
    };

    [Fact]
    public void Lines_GoodBatch_CountsEverything()
        => Assert.Equal("2 made, 1 already there, 0 failed, 3 without results, in 1.2 s.", BatchSummary.Lines(Good, Items(3)).First());

    [Fact]
    public void Complaints_GoodBatch_HasNone() => Assert.Empty(BatchSummary.Complaints(Good, []));

    [Fact]
    public void Complaints_ManyLeft_NamesTwentyAndCountsTheRest()
    {
        var line = BatchSummary.Complaints(Good with { Ending = BatchEnding.Stopped, Left = Items(23) }, []).Last();
        Assert.StartsWith("Left: 23: P1, P2,", line, StringComparison.Ordinal);
        Assert.EndsWith("P20 and 3 more. The same command goes on with them.", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Complaints_OutOfDatePages_AreNamed()
        => Assert.Contains("n-TC09.html", Assert.Single(BatchSummary.Complaints(Good with { OutOfDate = ["n-TC09.html"] }, [])), StringComparison.Ordinal);

    [Fact]
    public void Complaints_HostileLabel_CannotReachTheTerminal()
    {
        var failed = new BatchFailure(new("x", "x \u001b[31mred\u202e\nline" + new string('y', 100)), "cell 3", new CellFailure("Exception", "no", null, []), "/out/x.html");
        var line = BatchSummary.Complaints(Good with { Failed = [failed] }, []).First();
        Assert.StartsWith("x ·[31mred··line", line, StringComparison.Ordinal);
        Assert.EndsWith("… stopped at cell 3: Exception: no", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Complaints_MessageWrittenForTheReader_StandsWithoutTheKindOfError()
    {
        var failed = new BatchFailure(new("x", "x"), "cell 2", new CellFailure("SeasonException", "day is 'June'; use \"latest\".", 7, []), "/out/x.html");
        Assert.Equal("x stopped at cell 2, line 7: day is 'June'; use \"latest\".", BatchSummary.Complaints(Good with { Failed = [failed] }, []).First());
    }

    private static List<BatchItem> Items(int count) => [.. Enumerable.Range(1, count).Select(i => new BatchItem($"P{i}", $"P{i}"))];
}

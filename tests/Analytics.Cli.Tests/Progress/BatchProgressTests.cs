using Analytics.Cli.Progress;
using Analytics.Runner.Batches;

namespace Analytics.Cli.Tests.Progress;

public class BatchProgressTests
{
    [Fact]
    public void For_NoTerminal_WritesALinePerPage()
    {
        using var error = new StringWriter();
        using (var progress = BatchProgress.For(new Screen(TextWriter.Null, error, IsTerminal: false), "n.ipynb"))
        {
            progress.Begins(2, 5);
            progress.Starts(new BatchItem("a", "a Ann\u001b[2J"), 1, 2);
            progress.Starts(new BatchItem("b", "b"), 2, 2);
            progress.Finishing();
        }

        Assert.Equal("n.ipynb: 5 already there, 2 to make\nn.ipynb: a Ann·[2J (1 of 2)\nn.ipynb: b (2 of 2)\n", error.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task For_Terminal_DrawsABar()
    {
        await using var error = new StringWriter();
        using (var progress = BatchProgress.For(new Screen(TextWriter.Null, error, IsTerminal: true), "[odd] n.ipynb"))
        {
            progress.Begins(2, 0);
            progress.Starts(new BatchItem("a", "[/] Ann"), 1, 2);
            await Task.Delay(300);
            progress.Finishing();
        }

        Assert.Contains("[/] Ann, 1 of 2", error.ToString(), StringComparison.Ordinal);
    }
}

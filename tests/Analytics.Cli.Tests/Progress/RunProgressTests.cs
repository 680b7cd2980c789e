using Analytics.Cli.Progress;

namespace Analytics.Cli.Tests.Progress;

public class RunProgressTests
{
    [Fact]
    public void For_NoTerminal_WritesPlainLines()
    {
        using var error = new StringWriter();
        using (var progress = RunProgress.For(new Screen(TextWriter.Null, error, IsTerminal: false), "n.ipynb"))
        {
            progress.CellStarts("cell 1", 1, 2);
            progress.Writing();
        }

        Assert.Equal("n.ipynb: cell 1 (1 of 2)\nn.ipynb: writing\n", error.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task For_Terminal_DrawsABarAndClearsItAgain()
    {
        await using var error = new StringWriter();
        using (var progress = RunProgress.For(new Screen(TextWriter.Null, error, IsTerminal: true), "[odd] n.ipynb"))
        {
            progress.CellStarts("cell 1", 1, 2);
            await Task.Delay(300);
            progress.Writing();
        }

        Assert.Contains("cell 1 of 2", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("\u001b[", error.ToString(), StringComparison.Ordinal);
    }
}

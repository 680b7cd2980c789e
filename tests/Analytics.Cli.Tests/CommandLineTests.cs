namespace Analytics.Cli.Tests;

public class CommandLineTests
{
    [Theory]
    [InlineData("--help")]
    [InlineData("run", "--help")]
    [InlineData("help")]
    [InlineData("help", "run")]
    public async Task Help_Anywhere_TeachesByExampleAndListsTheExitCodes(params string[] args)
    {
        var heard = await Heard.RunAsync(args);
        Assert.Equal(0, heard.ExitCode);
        Assert.Contains("analytics run notebooks/testing-day.ipynb --season my-season --day 2026-06-08", heard.Out, StringComparison.Ordinal);
        Assert.Matches(@"(?m)^  3 +the run took longer", heard.Out);
    }

    [Theory]
    [InlineData("run")]
    [InlineData("check")]
    [InlineData("new-season")]
    [InlineData("codes")]
    [InlineData("promote")]
    public async Task Help_OfACommand_IsThatOfTheCommandItself(string command)
        => Assert.Equal((await Heard.RunAsync(command, "--help")).Out, (await Heard.RunAsync("help", command)).Out);

    [Fact]
    public async Task Help_OfNoCommand_ListsThoseThereAre()
    {
        var heard = await Heard.RunAsync("help", "rnu");
        Assert.Equal(1, heard.ExitCode);
        Assert.Contains("no command 'rnu' to explain. There are: run, verify, check, new-season, codes, promote", heard.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("run", "--help")]
    [InlineData("help", "run")]
    public async Task RunHelp_Options_AreAllThere(params string[] args)
    {
        var heard = await Heard.RunAsync(args);
        foreach (var option in new[] { "NOTEBOOK", "--season", "--earlier", "--share", "--day", "--set", "--out", "--timeout", "--open" })
            Assert.Contains(option, heard.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Version_IsThatOfTheLibrary() => Assert.Matches(@"^\d+\.\d+\.\d+", (await Heard.RunAsync("--version")).Out);

    [Theory]
    [InlineData("run")]
    [InlineData("rnu", "x.ipynb")]
    [InlineData("run", "x.ipynb", "--sesaon", "y")]
    [InlineData("run", "x.ipynb", "--timeout", "soon")]
    [InlineData("run", "x.ipynb", "--timeout", "0")]
    [InlineData("run", "x.ipynb", "--timeout", "NaN")]
    [InlineData("run", "x.ipynb", "--set", "nothing")]
    [InlineData("run", "x.ipynb", "--day", "08.06.2026")]
    [InlineData("run", "x.ipynb", "--day", "2026-02-30")]
    [InlineData("run", "x.ipynb", "--season", "no-such-folder")]
    [InlineData("run", "x.ipynb", "--earlier", "no-such-folder")]
    [InlineData("run", "x.ipynb", "--share", "nothing")]
    [InlineData("codes")]
    [InlineData("run", "no-such-folder/x.ipynb")]
    [InlineData("check")]
    [InlineData("new-season")]
    [InlineData("promote")]
    [InlineData("promote", "x.csx")]
    [InlineData("promote", "no-such-file.csx", "--name", "x")]
    public async Task Run_WhatCannotBeMeant_IsAUsageErrorInPlainWords(params string[] args)
    {
        var heard = await Heard.RunAsync(args);
        Assert.Equal(1, heard.ExitCode);
        Assert.NotEqual("", heard.Error.Trim());
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
    }
}

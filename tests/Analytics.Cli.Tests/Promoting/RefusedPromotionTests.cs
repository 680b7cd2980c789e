namespace Analytics.Cli.Tests.Promoting;

/// <summary>Whatever is in the way is told before anything is written.</summary>
public sealed class RefusedPromotionTests : IDisposable
{
    private readonly TinyClone clone = new();

    public void Dispose() => clone.Dispose();

    [Theory]
    [InlineData("--name 'Long Jump' is no identifier", "--name", "Long Jump")]
    [InlineData("--name 'a__b' is no identifier", "--name", "a__b")]
    [InlineData("There is a metric 'cmj_height' already", "--name", "cmj_height")]
    [InlineData("There is no folder 'Swimming' for metrics in src/Analytics.Metrics. Give one of these with --folder: Catalogue, Jumping, Sprinting, Strength.", "--name", "x", "--folder", "Swimming")]
    [InlineData("There is no folder '../Jumping' for metrics", "--name", "x", "--folder", "../Jumping")]
    [InlineData("There is no folder 'Trials' for metrics", "--name", "x", "--folder", "Trials")]
    [InlineData("src/Analytics.Metrics/Jumping/TakenMetric.cs is there already, and nothing is written over; if it comes of an earlier promotion, the line that one printed takes it back. Give another --name.", "--name", "taken")]
    [InlineData("There is no folder 'Bench' for metrics", "--name", "x", "--folder", "Bench")]
    [InlineData("tests/Analytics.Metrics.Tests/Jumping/TestedMetricTests.cs is there already", "--name", "tested")]
    [InlineData("There is a class HiddenMetric already, in src/Analytics.Metrics/Strength/Other.cs.", "--name", "hidden")]
    [InlineData("The label 'Body mass' is that of the metric 'body_mass'.", "--name", "x", "--label", "Body mass")]
    [InlineData("The metric needs a label.", "--name", "x", "--label", " ")]
    [InlineData("The label 'Jump [1]' holds the unit", "--name", "x", "--label", "Jump [1]")]
    [InlineData("The label holds a character that cannot be seen or read (U+202E): 'a·b'.", "--name", "x", "--label", "a\u202Eb")]
    [InlineData("The meaning holds a character that cannot be seen or read (U+0007)", "--name", "x", "--meaning", "a\u0007b")]
    [InlineData("The sketch does not say what it means.", "--name", "x", "--meaning", "")]
    [InlineData("--formula is empty", "--name", "x", "--formula", ".")]
    [InlineData("--waive 'not needed' says too little to a reviewer; write 3 words or more.", "--name", "x", "--waive", "not needed")]
    [InlineData("--waive '' says too little", "--name", "x", "--waive", "")]
    public async Task Promote_WhatCannotBeMeant_IsAUsageError(string says, params string[] options)
    {
        clone.Write("src/Analytics.Metrics/Jumping/TakenMetric.cs", "");
        clone.Write("tests/Analytics.Metrics.Tests/Jumping/TestedMetricTests.cs", "");
        clone.Write("src/Analytics.Metrics/Strength/Other.cs", "internal static class HiddenMetric;");
        clone.Commit();
        Refused(await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), options), 1, says);
    }

    [Theory]
    [InlineData("ideas.csx", "'ideas.csx' has 2 sketches: a, b. Say which one, for example 'ideas.csx#a'.")]
    [InlineData("ideas.csx#c", "'ideas.csx' has no sketch 'c'. It has: a, b.")]
    [InlineData("none.csx", "There is no file")]
    [InlineData("ideas.txt", "neither a notebook (.ipynb) nor a file of C# (.csx)")]
    public async Task Promote_SketchThatIsNotFound_SaysWhichThereAre(string asked, string says)
    {
        var file = clone.Ideas("""
            var one = Sketch.Day("a", "A", "m", Direction.Higher, (0, 3), d => null);
            var two = one with { Id = "b" };
            """);
        Refused(await clone.PromoteAsync(Path.Combine(Path.GetDirectoryName(file)!, asked), "--name", "x"), 1, says);
    }

    public static TheoryData<string, string> Broken => new()
    {
        { Ideas.Jump("(j, d) => j.Distance").Replace("\"idea\"", "\"cmj_height\"", StringComparison.Ordinal), "The sketch is not ready: The identifier 'cmj_height' is that of a library metric" },
        { Ideas.Jump("(j, d) => j.Distance", unit: "furlong"), "The sketch is not ready: " },
        { Ideas.Jump("(j, d) => j.Distance", unit: "kg"), "The formula of 'idea' goes wrong on 54 of " },
        { Ideas.Jump("(j, d) => j.Kind == JumpKind.StandingLong ? j.FlightTime.Value * 3 : null", unit: "s"), "athlete-days of tests/oracles/frozen-season/season; first TC01 on 2026-01-19: the formula takes the .Value of something that was not measured." },
        { Ideas.Jump("(j, d) => j.Kind == JumpKind.StandingLong ? j.Distance / d.Stature!.Value * Length.FromMetres(1) : null"), "The formula of 'idea' goes wrong on a day without a stature, which would stop every report once it is in the library: the formula takes the .Value of something that was not measured." },
        { Ideas.Jump("(j, d) => j.Method == JumpMethod.ForcePlate ? j.Distance : null"), "The formula of 'idea' gives no value on tests/oracles/frozen-season/season" },
        { Ideas.Jump("(j, d) => j.Distance", "Meaning = \"M.\", Sources = [\"nobody1900\"]"), "The source 'nobody1900' is not in docs/references.md. Add a line '- **nobody1900** Authors (year)." },
        { Ideas.Jump("(j, d) => j.Distance", "Meaning = \"M.\", Decimals = 5"), "The sketch shows 5 decimals; 0 to 4 can be shown." },
        { "var twice = 2.0;\n" + Ideas.Jump("(j, d) => j.Distance * twice"), "The formula does not stand alone in the library: CS0103: The name 'twice' does not exist in the current context" },
        { "AnyQuantity? Far(JumpTrial j, AthleteDay d) => j.Distance;\n" + Ideas.Jump("Far"), "The formula of 'idea' is 'Far', which stands somewhere else. Write it as a lambda into Sketch.Each(...)" },
        { Ideas.Jump("(j, d) => { var unused = 1; return j.Distance; }"), "CS0219" },
        { Ideas.Jump("(j, d) => j.Distance * Random.Shared.NextDouble()"), "The formula gives other values in the library than in the sketch, for example " },
        { "\n" + Ideas.Jump("(j, d) => j.Distanse"), "ideas.csx, line 2: CS1061" },
        { "\nthrow new InvalidOperationException(\"not today\");\n" + Ideas.Jump("(j, d) => j.Distance"), "ideas.csx, line 2: InvalidOperationException: not today" },
    };

    // A formula in words is no cover for code that looks other than it is.
    [Fact]
    public async Task Promote_FormulaWithWhatCannotBeSeen_IsRefusedThoughItIsGivenInWords()
        => Refused(await clone.PromoteAsync(clone.Ideas(Ideas.Jump("(j, d) => /* \u202E */ j.Distance")), "--name", "x", "--formula", "s; s jump distance [m]"), 1, "The formula in C# holds a character that cannot be seen or read (U+202E)");

    [Theory]
    [MemberData(nameof(Broken))]
    public async Task Promote_SketchThatIsNotReady_SaysWhy(string code, string says) => Refused(await clone.PromoteAsync(clone.Ideas(code), "--name", "x"), 2, says);

    [Theory]
    [InlineData("docs/metrics.md")]
    [InlineData("docs/changelog.md")]
    [InlineData("src/Analytics.Metrics/Catalogue/AddedMetrics.cs")]
    public async Task Promote_TargetThatIsNotCommitted_IsLeftAlone(string path)
    {
        clone.Write(path, clone.Read(path) + "\n// mine\n");
        Refused(await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "x"), 2, $"Not committed: {path}. A promotion changes this file, and undoing it would lose your changes.");
    }

    [Theory]
    [InlineData("docs/metrics.md", "# Metrics\n", "docs/metrics.md does not tell the metrics this program knows: it was built from other code")]
    [InlineData("src/Analytics.Metrics/Catalogue/AddedMetrics.cs", "// nothing\n", "AddedMetrics.cs does not hold one list that ends with a line '];'")]
    public async Task Promote_CloneOfOtherCode_IsToldSo(string path, string text, string says)
    {
        clone.Write(path, text);
        clone.Commit();
        Refused(await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "x"), 2, says);
    }

    [Fact]
    public async Task Promote_FileKnownToGitOnly_IsNotWritten()
    {
        clone.Write("src/Analytics.Metrics/Jumping/GoneMetric.cs", "// mine");
        clone.Commit();
        File.Delete(clone.In("src/Analytics.Metrics/Jumping/GoneMetric.cs"));
        Refused(await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "gone"), 1, "GoneMetric.cs is known to git although it is not there now.");
    }

    [Fact]
    public async Task Promote_NoClone_SaysSo()
    {
        using var empty = new TempFolder();
        var ideas = clone.Ideas(Ideas.ForSize);
        Assert.Contains("is not in a clone of this program's repository", (await Heard.RunAsync("promote", ideas, "--name", "x", "--repository", empty.Path)).Error, StringComparison.Ordinal);
        File.WriteAllText(empty.File("Analytics.sln"), "");
        Assert.Contains("is no whole clone of this program's repository: src/Analytics.Metrics is missing", (await Heard.RunAsync("promote", ideas, "--name", "x", "--repository", empty.Path)).Error, StringComparison.Ordinal);
        Directory.Move(clone.In(".git"), clone.In(".not-git"));
        var heard = await clone.PromoteAsync(ideas, "--name", "x");
        Directory.Move(clone.In(".not-git"), clone.In(".git"));
        Refused(heard, 2, "is not under git with a commit");
    }

    private void Refused(Heard heard, int code, string says)
    {
        Assert.Contains(says, heard.Error, StringComparison.Ordinal);
        Assert.Equal((code, ""), (heard.ExitCode, heard.Out));
        Assert.DoesNotContain("   at ", heard.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(clone.Status.Split('\n'), l => l.StartsWith('A') || l.StartsWith('?'));
        Assert.Equal("", clone.Git("diff", "HEAD", "--name-only", "--diff-filter=A"));
    }
}

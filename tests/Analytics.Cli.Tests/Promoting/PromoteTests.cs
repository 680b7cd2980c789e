using Analytics.Runner.Sources;

namespace Analytics.Cli.Tests.Promoting;

public sealed class PromoteTests : IDisposable
{
    private const string Source = "src/Analytics.Metrics/Jumping/LongJumpForSizeMetric.cs", Tests = "tests/Analytics.Metrics.Tests/Jumping/LongJumpForSizeMetricTests.cs";

    private readonly TinyClone clone = new();

    public void Dispose() => clone.Dispose();

    [Fact]
    public async Task Promote_Sketch_WritesSourceTestsListPageAndChangelog()
    {
        var heard = await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "long_jump_for_size");
        Assert.Equal((0, ""), (heard.ExitCode, heard.Error));
        Assert.Equal($" M docs/changelog.md\n M docs/metrics.md\n M src/Analytics.Metrics/Catalogue/AddedMetrics.cs\nA  {Source}\nA  {Tests}\n", clone.Status);
        Assert.Equal("""
            using Analytics.Metrics.Catalogue;
            using Analytics.Metrics.Trials;

            namespace Analytics.Metrics.Jumping;

            /// <summary>Long jump for size. How far the body is thrown for its length.</summary>
            public static class LongJumpForSizeMetric
            {
                /// <summary>Long jump for size, a number without unit.</summary>
                public static Metric Metric { get; } = new()
                {
                    Id = "long_jump_for_size",
                    Label = "Long jump for size",
                    Unit = "1",
                    Decimals = 2,
                    Better = Direction.Higher,
                    Quality = Quality.ExplosivePower,
                    Rule = TrialRule.Best,
                    FromTrials = AttemptFormula.Each<JumpTrial>("1", (jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null).Of,
                    PlausibleLow = 0.8,
                    PlausibleHigh = 2.2,
                    Meaning = "How far the body is thrown for its length.",
                    Formula = "(jump, day) => jump.Kind == JumpKind.StandingLong ? jump.Distance / day.Stature : null",
                    Sources = [],
                };
            }

            """, clone.Read(Source));
        Assert.Contains("    [\n        new(Jumping.LongJumpForSizeMetric.Metric, \"jumps\"),\n    ];\n", clone.Read("src/Analytics.Metrics/Catalogue/AddedMetrics.cs"), StringComparison.Ordinal);
        Assert.Contains("\n| Long jump for size | `long_jump_for_size` | 1 | higher | best attempt | explosive power |\n", clone.Read("docs/metrics.md"), StringComparison.Ordinal);
        Assert.Contains("\n  in two lines.\n- New metric: Long jump for size (`long_jump_for_size`), which began as a sketch.\n\n## 0.1.0\n", clone.Read("docs/changelog.md"), StringComparison.Ordinal);
    }

    // TC01 is 75 in tall; his longest standing jump of 19 January is typed as 97 in: 97 / 75 = 1.2933...
    [Fact]
    public async Task Promote_Sketch_TestsHoldItsValuesAndOneBlankCheck()
    {
        await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "long_jump_for_size");
        var tests = clone.Read(Tests);
        Assert.Contains("    [InlineData(\"TC01\", \"2026-01-19\", 1.293333333, \"tape\")]\n", tests, StringComparison.Ordinal);
        Assert.Equal(12, tests.Split("[InlineData(").Length - 1);
        Assert.Equal(5, tests.Split('"').Where(t => t.StartsWith("2026-", StringComparison.Ordinal)).Distinct().Count());
        Assert.EndsWith("    [Fact]\n    public void Value_FromOutside_Agrees() => PublishedCheck.Blank().Hold(LongJumpForSizeMetric.Metric);\n}\n", tests, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promote_Undone_LeavesTheCloneAsItWas()
    {
        var heard = await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "long_jump_for_size");
        var undo = Assert.Single(heard.Out.Split('\n'), l => l.Contains("checkout", StringComparison.Ordinal)).Trim();
        Assert.StartsWith($"git -C {clone.Root} checkout --no-overlay HEAD -- src/", undo, StringComparison.Ordinal);
        clone.Git([.. undo.Split(' ').Skip(3)]);
        Assert.Equal("", clone.Status);
        Assert.False(File.Exists(clone.In(Source)));
    }

    [Fact]
    public async Task Promote_NotebookWithSeveral_TakesTheOneNamed()
    {
        var bench = clone.Ideas(TempFolder.NotebookText(("sketch", Ideas.ForSize), ("", "this is no code"), ("sketch", "var mean = forSize.MeanOf(\"long_jump_mean\");")), "bench.ipynb");
        var heard = await clone.PromoteAsync(bench + "#long_jump_mean", "--name", "long_jump_share", "--folder", "Strength", "--label", "Long jump share", "--formula", "s / H; s distance [m], H stature [m].");
        Assert.Equal((0, ""), (heard.ExitCode, heard.Error));
        var source = clone.Read("src/Analytics.Metrics/Strength/LongJumpShareMetric.cs");
        foreach (var line in new[] { "namespace Analytics.Metrics.Strength;", "Label = \"Long jump share\",", "Rule = TrialRule.Mean,", "Formula = \"s / H; s distance [m], H stature [m]\"," })
            Assert.Contains(line, source, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promote_Sources_GiveAPlaceEachOrAWaiver()
    {
        var idea = clone.Ideas(Ideas.Jump("(j, d) => j.Distance", """Meaning = "How far", Sources = ["souza2020", "adams1998"], RuleReason = "Chance evens out.", Minutes = 1.5""" + " "));
        var heard = await clone.PromoteAsync(idea, "--name", "an_idea");
        Assert.Equal(0, heard.ExitCode);
        const string File = "tests/Analytics.Metrics.Tests/Jumping/AnIdeaMetricTests.cs";
        Assert.Contains("Value_Souza2020_Agrees() => PublishedCheck.Blank(\"souza2020\").Hold", clone.Read(File), StringComparison.Ordinal);
        Assert.Contains("Value_Adams1998_Agrees() => PublishedCheck.Blank(\"adams1998\").Hold", clone.Read(File), StringComparison.Ordinal);
        Assert.Contains("        RuleReason = \"Chance evens out.\",\n", clone.Read("src/Analytics.Metrics/Jumping/AnIdeaMetric.cs"), StringComparison.Ordinal);
        Assert.Contains("\nHow far.\n", clone.Read("docs/metrics.md"), StringComparison.Ordinal);
        Assert.Contains("        new(Jumping.AnIdeaMetric.Metric, \"jumps\", 1.5),\n", clone.Read("src/Analytics.Metrics/Catalogue/AddedMetrics.cs"), StringComparison.Ordinal);
        clone.Git("reset", "--quiet", "--hard");
        Assert.Equal(0, (await clone.PromoteAsync(idea, "--name", "an_idea", "--waive", "nobody has measured it")).ExitCode);
        Assert.Contains("Value_Adams1998_Agrees() => PublishedCheck.Waived(\"nobody has measured it\").Hold", clone.Read(File), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promote_HostileTexts_StayTexts()
    {
        const string Hostile = "A \"b\" \\ */ </summary>\n<c>&amp; {0} \u2028 ///\t#if 'x' $\"{y}\" \"\"\"";
        var heard = await clone.PromoteAsync(clone.Ideas(Ideas.ForSize), "--name", "an_idea", "--label", Hostile, "--meaning", Hostile + "!", "--formula", Hostile + "?", "--waive", Hostile + " so");
        Assert.Equal((0, ""), (heard.ExitCode, heard.Error));
        var source = clone.Read("src/Analytics.Metrics/Jumping/AnIdeaMetric.cs");
        Assert.Contains("""        Label = "A \"b\" \\ */ </summary> <c>&amp; {0} /// #if 'x' $\"{y}\" \"\"\"",""", source, StringComparison.Ordinal);
        Assert.Contains("""/// <summary>A "b" \ */ &lt;/summary&gt; &lt;c&gt;&amp;amp; {0} /// #if 'x' $"{y}" """, source, StringComparison.Ordinal);
        // The source was compiled, with its documentation, before it was written. The tests' file lacks here only what it refers to, and needs no documentation.
        var tests = LibraryFile.Compile(clone.Read("tests/Analytics.Metrics.Tests/Jumping/AnIdeaMetricTests.cs"), []);
        Assert.All(tests.Errors, e => Assert.Matches("^CS(0234|0246|0103|1591):", e.Message));
        Assert.Contains("""PublishedCheck.Waived("A \"b\" \\ */ </summary> <c>&amp; {0} /// #if 'x' $\"{y}\" \"\"\" so").Hold""", clone.Read("tests/Analytics.Metrics.Tests/Jumping/AnIdeaMetricTests.cs"), StringComparison.Ordinal);
        Assert.DoesNotContain(clone.Read("docs/metrics.md").Split('\n'), l => l.StartsWith("<c>", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Promote_FormulaOverLibraryMetrics_GoesByItsQuality()
    {
        var idea = clone.Ideas("""
            var idea = Sketch.Day("idea", "An idea", "kg·m/s", Direction.Higher, (1, 4000),
                day => day.BodyMass * day.Value("max_speed")) with { Meaning = "Mass at full speed.", Quality = Quality.Momentum, Sources = ["souza2020"] };
            """);
        var heard = await clone.PromoteAsync(idea, "--name", "full_momentum");
        Assert.Equal((0, ""), (heard.ExitCode, heard.Error));
        var source = clone.Read("src/Analytics.Metrics/Sprinting/FullMomentumMetric.cs");
        Assert.Contains("using Analytics.Metrics.Sketching;\n", source, StringComparison.Ordinal);
        Assert.Contains("FromTrials = AttemptFormula.Day(\"kg·m/s\", day => day.BodyMass * day.Value(\"max_speed\")).Of,\n", source, StringComparison.Ordinal);
        Assert.Contains("new(Sprinting.FullMomentumMetric.Metric, \"other tests of the day\"),\n", clone.Read("src/Analytics.Metrics/Catalogue/AddedMetrics.cs"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promote_FormulaOverSeveralLines_KeepsThemAtTheNewMargin()
    {
        var idea = clone.Ideas("""
            var idea = Sketch.Day("idea", "An idea", "kg", Direction.Higher, (20, 400), day =>
            {
                // The heaviest of the day.
                var sets = day.Of<LiftSet>().ToList();
                return sets.Count > 0 ? sets.Max(s => s.Load) : null;
            }) with { Meaning = "How heavy.", Quality = Quality.MaximalStrength };
            """);
        var heard = await clone.PromoteAsync(idea, "--name", "heaviest_set");
        Assert.Equal((0, ""), (heard.ExitCode, heard.Error));
        Assert.Contains("""
                    FromTrials = AttemptFormula.Day("kg", day =>
                        {
                            // The heaviest of the day.
                            var sets = day.Of<LiftSet>().ToList();
                            return sets.Count > 0 ? sets.Max(s => s.Load) : null;
                        }).Of,
            """, clone.Read("src/Analytics.Metrics/Strength/HeaviestSetMetric.cs"), StringComparison.Ordinal);
    }
}

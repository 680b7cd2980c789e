using System.Globalization;
using System.Text.RegularExpressions;
using Analytics.Simulation.Commands;
using Analytics.Simulation.ErrorRates.Grid;
using Analytics.Simulation.ErrorRates.Grid.Document;

namespace Analytics.Simulation.Tests.ErrorRates.Grid;

/// <summary>The measured rates as they are kept: complete, in agreement with each other, and the promised intervals hold.</summary>
public partial class CommittedRatesTests
{
    private static readonly string Document = File.ReadAllText(CommittedStudy.InRepository("docs/error-rates.md"));
    private static readonly string[] Quoted = File.ReadAllLines(CommittedStudy.InRepository(ErrorRatesCommand.QuotedFile));
    private static readonly string[] Cases = File.ReadAllLines(CommittedStudy.InRepository("docs/error-rates.csv"));

    [Fact]
    public void Document_QuotedFigures_AreThoseOfTheReports()
    {
        Assert.Equal(13, Quoted.Length);
        Assert.All(Quoted.Skip(1), line => Assert.Contains($"| {line.Replace(",", " | ", StringComparison.Ordinal)} |\n", Document, StringComparison.Ordinal));
    }

    [Fact]
    public void Document_EveryEntry_IsMeasured()
    {
        Assert.Equal(EveryCase.Head, Cases[0]);
        var names = Registry.Intervals.Select(i => i.Name).Concat(Registry.Verdicts.Select(v => v.Name)).Concat(Registry.Rates.Select(r => r.Name));
        Assert.All(names, name => Assert.Contains(Cases, line => line.Contains($",\"{name}\",", StringComparison.Ordinal)));
        Assert.All(names, name => Assert.True(Document.Contains(name, StringComparison.Ordinal) || name == "The report's rule in a squad", name));
    }

    /// <summary>Every 95 % interval that reports print covers 93.5 to 96.5 % with normal errors and ten athletes or more.</summary>
    [Fact]
    public void Coverage_IntervalsOfReports_HoldWithTenAthletesAndNormalErrors()
    {
        var looked = Cases.Select(l => Line().Match(l)).Where(m => m.Success && m.Groups["reports"].Value == "yes" && int.Parse(m.Groups["athletes"].Value, CultureInfo.InvariantCulture) >= 10
            && (m.Groups["errors"].Value == "normal" || m.Groups["name"].Value == "Coefficient of variation")).ToList();
        Assert.True(looked.Count > 50, $"{looked.Count} cases");
        Assert.All(looked, m => Assert.True(double.Parse(m.Groups["rate"].Value, CultureInfo.InvariantCulture) is >= IntervalTables.Least and <= IntervalTables.Most, m.Value));
    }

    /// <summary>The band can be left: with the normal multiplier and ten athletes it is.</summary>
    [Fact]
    public void Coverage_NormalMultiplier_DoesNotHold()
    {
        var case_ = Cases.Single(l => l.Contains("normal multiplier", StringComparison.Ordinal) && l.Contains("\"10 athletes, 2 trials, ICC 0.90, normal\"", StringComparison.Ordinal));
        Assert.True(double.Parse(Line().Match(case_).Groups["rate"].Value, CultureInfo.InvariantCulture) < IntervalTables.Least);
    }

    [GeneratedRegex("^interval,\"(?<name>[^\"]+)\",(?<reports>yes|no),\"(?<athletes>\\d+) athletes, \\d+ trials, ICC [\\d.]+, (?<errors>[^\"]+)\",[\\d.]*,[\\d.]*,(?<rate>[\\d.]+),")]
    private static partial Regex Line();
}

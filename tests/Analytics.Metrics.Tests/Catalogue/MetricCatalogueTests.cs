using System.Text.RegularExpressions;
using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Catalogue;

public partial class MetricCatalogueTests
{
    public static TheoryData<string> Ids => [.. MetricCatalogue.All.Select(m => m.Id)];

    [Fact]
    public void All_Ids_AreUniqueAndPlain()
    {
        Assert.Equal(MetricCatalogue.All.Count, MetricCatalogue.All.Select(m => m.Id).Distinct().Count());
        Assert.Equal(MetricCatalogue.All.Count, MetricCatalogue.All.Select(m => m.Label).Distinct().Count());
        Assert.All(MetricCatalogue.All, m => Assert.Matches(PlainId(), m.Id));
    }

    [Fact]
    public void Get_UnknownId_ListsTheKnownOnes()
    {
        var error = Assert.Throws<KeyNotFoundException>(() => MetricCatalogue.Get("cmj_hieght"));
        Assert.Contains("No metric 'cmj_hieght'; known: body_mass, ", error.Message, StringComparison.Ordinal);
        Assert.Contains("cmj_height", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Metric_Texts_AreThere(string id)
    {
        var m = MetricCatalogue.Get(id);
        Assert.All([m.Label, m.Unit, m.Meaning, m.Formula], text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.EndsWith(".", m.Meaning, StringComparison.Ordinal);
        Assert.DoesNotContain($"[{m.Unit}]", m.Label, StringComparison.Ordinal);
        Assert.InRange(m.Decimals, 0, 4);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Metric_SourcesAndPublishedError_AreInTheReferences(string id)
    {
        var m = MetricCatalogue.Get(id);
        var keys = ReferenceKey().Matches(File.ReadAllText(Repository.Path("docs", "references.md"))).Select(k => k.Groups[1].Value).ToHashSet();
        Assert.All(m.Sources, key => Assert.Contains(key, keys));
        if (m.PublishedError is not { } error) return;
        Assert.Contains(error.SourceKey, keys);
        Assert.True(error.Percent > 0 ^ error.Absolute > 0, "a published error is a percentage or an absolute figure, above 0");
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Metric_PlausibleRange_IsOrdered(string id)
    {
        var m = MetricCatalogue.Get(id);
        Assert.True(double.IsFinite(m.PlausibleLow) && double.IsFinite(m.PlausibleHigh) && m.PlausibleLow < m.PlausibleHigh);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void FromTrials_EmptyDay_GivesNothing(string id) => Assert.Empty(MetricCatalogue.Get(id).FromTrials(Days.Empty));

    [Theory]
    [MemberData(nameof(Ids))]
    public void FromTrials_FullDay_GivesPlausibleValues(string id)
    {
        var m = MetricCatalogue.Get(id);
        var values = m.FromTrials(FullDay.Good).ToList();
        Assert.NotEmpty(values);
        Assert.All(values, v => Assert.InRange(v.Value, m.PlausibleLow, m.PlausibleHigh));
        Assert.All(values, v => Assert.True(v.StandardError is null or > 0, $"standard error {v.StandardError}"));
    }

    // Readings of 0 never pass the season's checks; a trial made in code gives nothing or is refused by value, never NaN.
    [Theory]
    [MemberData(nameof(Ids))]
    public void FromTrials_DayOfZeros_IsNeverNaN(string id)
    {
        List<TrialValue> values = [];
        try
        {
            values.AddRange(MetricCatalogue.Get(id).FromTrials(FullDay.Zeros));
        }
        catch (ArgumentOutOfRangeException refusal)
        {
            Assert.Contains("got 0", refusal.Message, StringComparison.Ordinal);
        }
        Assert.All(values, v => Assert.True(double.IsFinite(v.Value), $"{v.Value}"));
    }

    [GeneratedRegex("^[a-z][a-z0-9_]*$")]
    private static partial Regex PlainId();

    [GeneratedRegex(@"^- \*\*([a-z0-9]+)\*\*", RegexOptions.Multiline)]
    private static partial Regex ReferenceKey();
}

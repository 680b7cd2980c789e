using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Contact;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using static Analytics.Metrics.Tests.Contact.Seen;

namespace Analytics.Metrics.Tests.Contact;

public class ContactMetricsTests
{
    [Fact]
    public void Times_over_different_gaps_are_different_series()
    {
        var day = Days.With(Trial((100, 202)) with { Gap = Length.FromMetres(0.46) }, Trial((100, 205)) with { Gap = Length.FromMetres(0.54) }, Trial((100, 207)));
        Assert.Equal(["gap 0.46 m", "gap 0.54 m", "gap not measured"], MetricCatalogue.Get("contact_time").FromTrials(day).Select(v => v.Series));
    }

    [Fact]
    public void Judgement_is_pooled_over_the_day()
    {
        var day = Days.With(Trial((100, 202), (102, 202)), Trial((100, 205)));
        ContactTrial[] trials = [.. day.Of<ContactTrial>()];
        var values = MetricCatalogue.Get("contact_time").FromTrials(day).ToList();
        Assert.Equal(ContactMeasures.Of(trials[1], JudgementError.OfRepeats(trials)).Time.StandardError.Seconds, values[1].StandardError!.Value, 1e-12);
        Assert.Equal(0.4375, values[1].Value, 1e-12);
    }

    [Fact]
    public void Readings_that_cannot_be_timed_give_nothing() => Assert.Empty(MetricCatalogue.Get("contact_time").FromTrials(Days.With(Trial((100, 90)))));
}

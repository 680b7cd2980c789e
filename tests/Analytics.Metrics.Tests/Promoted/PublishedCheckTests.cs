using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Promoted;

public class PublishedCheckTests
{
    // 225 lb by the definition of the pound: 102.05828325 kg.
    private static readonly AthleteDay Weighed = Days.With(new BodyMeasure { AthleteId = "a1", Date = Days.Date, BodyMass = Mass.FromPounds(225) });

    [Fact]
    public void Blank_Hold_FailsAndSaysWhatToFillIn()
    {
        var message = Failure(PublishedCheck.Blank("souza2020"));
        Assert.StartsWith("Blank check of body_mass: look for a figure in souza2020 and put PublishedCheck.Filled(", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Filled_FigureThatAgrees_Passes() => PublishedCheck.Filled("souza2020, table 1", Weighed, 102.06, 0.005, "printed to two decimals").Hold(BodyMetrics.BodyMass);

    [Theory]
    [InlineData("souza2020", 102.1, 0.005, "printed to two decimals", "souza2020 gives 102.1 kg, body_mass gives 102.0582833; more than 0.005 apart (printed to two decimals).")]
    [InlineData("nobody1900", 102.06, 0.005, "printed to two decimals", "nobody1900")]
    [InlineData("souza2020", 102.06, 0, "printed to two decimals", "The tolerance 0 must be above 0")]
    [InlineData("souza2020", 102.06, double.NaN, "printed to two decimals", "The tolerance NaN must be above 0")]
    [InlineData("souza2020", 102.06, 0.005, "because", "'because' says too little; write 3 words or more.")]
    public void Filled_FigureThatDoesNot_Fails(string source, double expected, double tolerance, string because, string says)
        => Assert.Contains(says, Failure(PublishedCheck.Filled(source, Weighed, expected, tolerance, because)), StringComparison.Ordinal);

    [Fact]
    public void Filled_DayWithoutValue_Fails() => Failure(PublishedCheck.Filled("souza2020", Days.Empty, 102.06, 0.005, "printed to two decimals"));

    [Fact]
    public void Waived_WithReason_Passes() => PublishedCheck.Waived("an idea of our own").Hold(BodyMetrics.BodyMass);

    [Theory]
    [InlineData("")]
    [InlineData("  \n ")]
    [InlineData("not needed")]
    public void Waived_WithTooFewWords_Fails(string reason) => Assert.Contains("says too little", Failure(PublishedCheck.Waived(reason)), StringComparison.Ordinal);

    private static string Failure(PublishedCheck check) => Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => check.Hold(BodyMetrics.BodyMass)).Message;
}

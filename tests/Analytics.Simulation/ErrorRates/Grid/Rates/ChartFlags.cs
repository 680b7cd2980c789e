using Analytics.Statistics.Monitoring;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>The next value outside a chart of single values, limits from m earlier ones by moving ranges, nothing having changed.</summary>
public sealed class IndividualsChartFlag : RateUnderTest
{
    public override string Name => "Outside a chart of single values (moving ranges)";

    public override string Claim => "limits of 3 SD flag 0.27 % of unchanged values; with few earlier values far more";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from m in new[] { 5, 10, 20, 30, 50 }
           select new RateCase(FormattableString.Invariant($"{m} values before"), 0.0027, random =>
           {
               double[] before = [.. Enumerable.Range(0, m).Select(_ => random.Normal())];
               return !IndividualsChart.FromBaseline(before).Limits.Contains(random.Normal());
           }),
    ];
}

/// <summary>The library's own-baseline limits: Student's t for one new value.</summary>
public sealed class OwnBaselineLimits : RateUnderTest
{
    public override string Name => "Outside the limits of an athlete's own baseline";

    public override string Claim => "an unchanged athlete is flagged in 5 %, from three earlier tests on";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from m in new[] { 3, 5, 10, 20, 50 }
           select new RateCase(FormattableString.Invariant($"{m} tests before"), 0.05, random =>
           {
               double[] before = [.. Enumerable.Range(0, m).Select(_ => random.Normal())];
               return !OwnBaseline.Of(before).Limits.Contains(random.Normal());
           }, 0.05),
    ];
}

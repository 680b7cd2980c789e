using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Many looks: one false flag at least among unchanged athletes, the error known.</summary>
public sealed class SquadFlag : RateUnderTest
{
    public override string Name => "At least one false flag in a squad";

    public override string Claim => "5 % for each athlete is not 5 % for the squad";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from m in new[] { 10, 25, 50 }
           select new RateCase(FormattableString.Invariant($"{m} athletes"), null, random =>
           {
               var raised = false;
               for (var i = 0; i < m; i++)
                   raised |= BeyondErrorRule.Standard.Judge(new(Math.Sqrt(2) * random.Normal(), Math.Sqrt(2), double.PositiveInfinity), null).IsClear();
               return raised;
           }, FlagRates.AtLeastOne(m, 0.05)),
    ];
}

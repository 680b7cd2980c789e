using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>"He changed by more than what matters", nothing else asked.</summary>
public sealed class PointBeyondWorthwhile : RateUnderTest
{
    public override string Name => "Change larger than the smallest worthwhile one (not used)";

    public override string Claim => "nothing; counted are unchanged athletes it points at, worthwhile change 0.2 of the true spread";

    public override IReadOnlyList<RateCase> Cases { get; } =
    [
        .. from icc in TableCell.Reliabilities
           let worthwhile = 0.2 * Math.Sqrt(icc / (1 - icc))
           select new RateCase(FormattableString.Invariant($"ICC {icc:0.00}"), null,
               random => Math.Abs(random.Normal() - random.Normal()) > worthwhile, FlagRates.PointBeyondWorthwhile(worthwhile)),
    ];
}

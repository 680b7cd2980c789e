using Analytics.Simulation.ErrorRates.Grid.Intervals;
using Analytics.Simulation.ErrorRates.Grid.Rates;
using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Simulation.ErrorRates.Grid.Verdicts;
using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid;

/// <summary>Coverage of one interval in one case.</summary>
/// <param name="None">Draws in which the method said it could give no interval; not in the coverage.</param>
public sealed record IntervalResult(IntervalUnderTest Entry, TableCell Cell, RateCount Covered, int None, double? ClosedForm)
{
    /// <summary>Distance of the coverage from the nominal one.</summary>
    public double Off => Math.Abs(Covered.Rate - Entry.Nominal);
}

/// <summary>Verdicts of one rule in one case for one true change (0 or upward).</summary>
public sealed record VerdictResult(
    VerdictUnderTest Entry, ChangeCase Case, double TrueChange, int Draws, IReadOnlyDictionary<Verdict, int> Counts, double? ClosedForm)
{
    public double Rate(params ReadOnlySpan<Verdict> verdicts)
    {
        var sum = 0;
        foreach (var verdict in verdicts) sum += Counts.GetValueOrDefault(verdict);
        return (double)sum / Draws;
    }

    /// <summary>Gain or loss.</summary>
    public double Clear => Rate(Verdict.ClearGain, Verdict.ClearLoss);

    /// <summary>Clear in the right direction.</summary>
    public double Hit => Rate(Verdict.ClearGain);

    public double Error(double rate) => Math.Sqrt(rate * (1 - rate) / Draws);
}

/// <summary>Any other rate in one case.</summary>
public sealed record RateResult(RateUnderTest Entry, RateCase Case, RateCount Count);

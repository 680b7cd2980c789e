using Analytics.Simulation.ErrorRates.Grid.Tables;
using Analytics.Statistics;
using Analytics.Statistics.Reliability;

namespace Analytics.Simulation.ErrorRates.Grid.Intervals;

/// <summary>One of the six intraclass correlations.</summary>
/// <param name="form">Which.</param>
/// <param name="name">Its name.</param>
public abstract class IccInterval(IccForm form, string name) : IntervalUnderTest
{
    public override string Name => name;

    public override string Claim => "the share of the variance that is between athletes";

    public override IReadOnlyList<TableCell> Cells => TableCell.Everything;

    protected bool IsConsistency => form is IccForm.ConsistencySingle or IccForm.ConsistencyMean;

    private bool IsAgreement => form is IccForm.AgreementSingle or IccForm.AgreementMean;

    /// <summary>Only the agreement interval is approximate; a common shift breaks the one-way model, which has none.</summary>
    public override double? ClosedForm(TableCell cell) => !IsAgreement && (cell.Errors == ErrorKind.Normal || (IsConsistency && cell.Errors == ErrorKind.CommonShift)) ? 0.95 : null;

    public override (Interval Interval, double Truth)? Of(SimulatedTable table)
    {
        var shift = IsConsistency ? 0 : table.ShiftVariance;
        var single = table.BetweenVariance / (table.BetweenVariance + shift + table.TypicalError * table.TypicalError);
        var isMean = form is IccForm.OneWayMean or IccForm.ConsistencyMean or IccForm.AgreementMean;
        return (IntraclassCorrelation.Of(table.Table, form).Interval, isMean ? IntraclassCorrelation.OfMean(single, table.Cell.Trials) : single);
    }
}

public sealed class OneWayIcc() : IccInterval(IccForm.OneWaySingle, "ICC(1,1)");

public sealed class AgreementIccInterval() : IccInterval(IccForm.AgreementSingle, "ICC(2,1), absolute agreement");

public sealed class ConsistencyIcc() : IccInterval(IccForm.ConsistencySingle, "ICC(3,1), consistency")
{
    public override bool InReports => true;
}

/// <summary>The intervals for means of k trials are those of single ones carried over, so a part of the grid is enough.</summary>
/// <param name="form">Which.</param>
/// <param name="name">Its name.</param>
public abstract class MeanIcc(IccForm form, string name) : IccInterval(form, name)
{
    public override IReadOnlyList<TableCell> Cells => [.. TableCell.Everything.Where(c => c.Trials == 3 && (c.Errors != ErrorKind.Normal || c.Reliability == 0.9))];
}

public sealed class OneWayMeanIcc() : MeanIcc(IccForm.OneWayMean, "ICC(1,k)");

public sealed class AgreementMeanIcc() : MeanIcc(IccForm.AgreementMean, "ICC(2,k), absolute agreement");

public sealed class ConsistencyMeanIcc() : MeanIcc(IccForm.ConsistencyMean, "ICC(3,k), consistency");

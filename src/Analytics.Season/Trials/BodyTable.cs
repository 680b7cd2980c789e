using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>body.csv</c>: body mass and stature.</summary>
internal sealed class BodyTable : TrialTable
{
    // Limits for grown and nearly grown athletes of collision sports; common practice, no source.
    public static readonly QuantityColumn BodyMass = new("mass", UnitSets.Loads, 35, 250, needed: true);

    public static readonly QuantityColumn Stature = new("stature", UnitSets.Heights, 1.2, 2.4);

    public override string Name => "body";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, BodyMass, Stature];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        double mass = row.NeedQuantity(BodyMass, "body mass"), stature = row.Quantity(Stature) ?? double.NaN;
        return row.Faults.Count > 0 ? null : new BodyMeasure
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            BodyMass = Mass.FromKilograms(mass),
            Stature = double.IsNaN(stature) ? null : Length.FromMetres(stature),
        };
    }
}

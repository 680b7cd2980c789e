using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>throws.csv</c>: medicine-ball throws.</summary>
internal sealed class ThrowsTable : TrialTable
{
    public static readonly Column Throw = new("throw", needed: true);

    public static readonly Column OnSide = new("side");

    // Limits outside which a value is a slip; common practice, no source.
    public static readonly QuantityColumn Ball = new("ball", UnitSets.Loads, 0.5, 15, needed: true);

    public static readonly QuantityColumn Distance = new("distance", UnitSets.Throws, 0.5, 30, needed: true);

    /// <summary>Throws the kit knows; any other identifier is read as well, with a remark.</summary>
    public static readonly IReadOnlyList<string> Known = ["overhead_back", "seated_chest", "standing_chest", "rotational"];

    public override string Name => "throws";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Throw, Attempt, Ball, Distance, OnSide];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        var kind = row.NeedIdentifier(Throw, "throw", Known);
        double ball = row.NeedQuantity(Ball, "mass of the ball"), distance = row.NeedQuantity(Distance, "distance");
        var side = row.Word(OnSide, Words.Sides);
        var attempt = place.Numbers.Of(row, Attempt, place.AthleteId, kind, side is null ? 0 : 1 + (int)side);
        return row.Faults.Count > 0 ? null : new ThrowTrial
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Throw = kind,
            Ball = Mass.FromKilograms(ball),
            Distance = Length.FromMetres(distance),
            Side = side,
        };
    }
}

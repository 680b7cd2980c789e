using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;

namespace Analytics.Season.Trials;

/// <summary><c>lifts.csv</c>: sets of lifts.</summary>
internal sealed class LiftsTable : TrialTable
{
    public static readonly Column Lift = new("lift", needed: true);

    public static readonly NumberColumn Set = new("set", 1, 1000, whole: true);

    public static readonly QuantityColumn Load = new("load", UnitSets.Loads, 0, 1000, needed: true);

    public static readonly NumberColumn Repetitions = new("reps", 1, 100, whole: true, needed: true);

    public static readonly NumberColumn Reserve = new("rir", 0, 10);

    // The scale ends at 10: nothing left. Repetitions in reserve are 10 less the rating.
    public static readonly NumberColumn Exertion = new("rpe", 1, 10);

    public static readonly QuantityColumn BarRise = new("bar_rise", UnitSets.Rises, 0.1, 2.5);

    public static readonly QuantityColumn PullTime = new("pull_time", UnitSets.Times, 0.1, 5);

    public override string Name => "lifts";

    public override IReadOnlyList<Column> Columns { get; } = [AthleteId, Lift, Set, Load, Repetitions, Reserve, Exertion, BarRise, PullTime];

    public override Trial? Read(RowCells row, in TrialPlace place)
    {
        var lift = row.NeedIdentifier(Lift, "lift", KnownLift.Ids);
        var load = row.NeedQuantity(Load, "load");
        LoadLimits.Check(row, Load, KnownLift.Of(lift), load);
        var repetitions = row.NeedWhole(Repetitions, "number of repetitions");
        var reserve = ReserveOf(row);
        double? rise = row.Quantity(BarRise), time = row.Quantity(PullTime);
        var attempt = place.Numbers.Of(row, Set, place.AthleteId, lift);
        return row.Faults.Count > 0 ? null : new LiftSet
        {
            AthleteId = place.AthleteId,
            Date = place.Date,
            Source = place.Source,
            Attempt = attempt,
            Lift = lift,
            Load = Mass.FromKilograms(load),
            Repetitions = repetitions,
            RepetitionsInReserve = reserve,
            BarRise = rise is { } metres ? Length.FromMetres(metres) : null,
            PullTime = time is { } seconds ? Duration.FromSeconds(seconds) : null,
        };
    }

    private static double? ReserveOf(RowCells row)
    {
        double? reserve = row.Number(Reserve), exertion = row.Number(Exertion);
        if (exertion is null) return reserve;
        var implied = 10 - exertion.Value;
        if (reserve is { } stated && Math.Abs(stated - implied) > 1)
            row.Fault(row.Head.HeadOf(Exertion), row.Text(Exertion), $"rpe {CellText.Number(exertion.Value)} means {CellText.Number(implied)} repetitions in reserve, but rir says {CellText.Number(stated)}", "Leave one of the two cells empty.");
        return reserve ?? implied;
    }
}

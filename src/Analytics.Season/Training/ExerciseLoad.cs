using Analytics.Planning.Exercises;
using Analytics.Quantities;
using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>What the load of an exercise is a share of, and how much of it.</summary>
internal sealed record ExerciseLoad(LoadBasis Basis, double OwnMaximumPercent, double? LeastPercent, double? MostPercent, Length? LeastHeight, Length? MostHeight)
{
    /// <summary>Reads the cells; a fault in the row says what is wrong with them.</summary>
    public static ExerciseLoad Read(RowCells row)
    {
        var basis = BasisOf(row);
        double? own = row.Number(ExerciseColumns.OwnMaximum), least = row.Number(ExerciseColumns.LeastPercent), most = row.Number(ExerciseColumns.MostPercent);
        var before = row.Faults.Count;
        double? low = row.Quantity(ExerciseColumns.LeastHeight), high = row.Quantity(ExerciseColumns.MostHeight);
        var heightsRead = row.Faults.Count == before;
        row.Rising(ExerciseColumns.MostPercent, least, most, "range of per cent");
        row.Rising(ExerciseColumns.MostHeight, low, high, "range of heights");
        if (own is not null && basis.Kind != LoadBasisKind.Lift)
            row.Wrong(ExerciseColumns.OwnMaximum, "an own maximum in per cent of a lift is given, but load_basis names no lift", "Name the lift in load_basis, or empty the cell.");
        if ((least ?? most) is not null && basis.Kind is (LoadBasisKind.None or LoadBasisKind.Height))
            row.Wrong(least is null ? ExerciseColumns.MostPercent : ExerciseColumns.LeastPercent, "per cent are given, but load_basis says of nothing", "Write a lift or body_mass in load_basis, or empty the cell.");
        if (basis.Kind == LoadBasisKind.Height && heightsRead && (low is null || high is null))
            row.Wrong(low is null ? ExerciseColumns.LeastHeight : ExerciseColumns.MostHeight, "load_basis is height, but the least or the most height is missing", "Fill in both, such as 12 in least_height_in and 30 in most_height_in.");
        if (basis.Kind != LoadBasisKind.Height && (low ?? high) is not null)
            row.Wrong(low is null ? ExerciseColumns.MostHeight : ExerciseColumns.LeastHeight, "a height is given, but load_basis is not height", "Write height in load_basis, or empty the cell.");
        return new(basis, own ?? 100, least, most, Metres(low), Metres(high));
    }

    private static LoadBasis BasisOf(RowCells row)
        => row.Id(ExerciseColumns.LoadBasis, "lift") switch
        {
            "" or "none" => LoadBasis.None,
            "body_mass" => LoadBasis.BodyMass,
            "height" => LoadBasis.Height,
            var lift => LoadBasis.Of(lift),
        };

    private static Length? Metres(double? metres) => metres is { } value ? Length.FromMetres(value) : null;
}

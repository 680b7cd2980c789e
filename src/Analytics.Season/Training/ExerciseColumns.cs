using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>The columns <c>exercises.csv</c> may have. Limits are meant to catch slips; common practice, no source.</summary>
internal static class ExerciseColumns
{
    public static readonly Column Exercise = new("exercise", needed: true);

    public static readonly Column Name = new("name");

    public static readonly Column Pattern = new("pattern", needed: true);

    public static readonly Column Quality = new("quality", needed: true);

    public static readonly Column LoadBasis = new("load_basis");

    public static readonly NumberColumn OwnMaximum = new("own_maximum_percent", 1, 300);

    public static readonly NumberColumn LeastPercent = new("least_percent", 0, 300);

    public static readonly NumberColumn MostPercent = new("most_percent", 0, 300);

    public static readonly QuantityColumn LeastHeight = new("least_height", UnitSets.Heights, 0.05, 1.5);

    public static readonly QuantityColumn MostHeight = new("most_height", UnitSets.Heights, 0.05, 1.5);

    public static readonly Column Unilateral = new("unilateral");

    public static readonly QuantityColumn RepetitionTime = new("repetition_time", UnitSets.Times, 0.1, 180, needed: true);

    public static readonly NumberColumn Contacts = new("jump_contacts", 0, 20, whole: true);

    public static readonly Column Impact = new("impact");

    public static readonly Column Stations = new("stations");

    public static readonly Column Implement = new("implement");

    public static readonly NumberColumn Preference = new("preference", 1, 3, whole: true);

    public static readonly NumberColumn SquatRatio = new("least_squat_ratio", 0.5, 4);

    public static readonly QuantityColumn MostBodyMass = new("most_body_mass", UnitSets.Loads, 35, 250);

    public static readonly NumberColumn TrainingYears = new("least_training_years", 0, 40);

    public static readonly Column Prerequisite = new("prerequisite");

    public static readonly Column Caution = new("caution");

    public static readonly IReadOnlyList<Column> All =
    [
        Exercise, Name, Pattern, Quality, LoadBasis, OwnMaximum, LeastPercent, MostPercent, LeastHeight, MostHeight, Unilateral, RepetitionTime, Contacts, Impact, Stations, Implement, Preference,
        SquatRatio, MostBodyMass, TrainingYears, Prerequisite, Caution,
    ];
}

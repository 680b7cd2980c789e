using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>The columns <c>targets.csv</c> may have. The unit has a column of its own, since it differs from metric to metric.</summary>
internal static class TargetColumns
{
    public static readonly Column Group = new("group");

    public static readonly Column Metric = new("metric", needed: true) { Synonyms = ["test"] };

    public static readonly Column Value = new("value", needed: true) { Synonyms = ["target"] };

    public static readonly Column Unit = new("unit");

    public static readonly Column Note = new("note");

    public static readonly IReadOnlyList<Column> All = [Group, Metric, Value, Unit, Note];
}

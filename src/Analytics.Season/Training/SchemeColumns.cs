using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>The columns <c>schemes.csv</c> may have. Limits are meant to catch slips; common practice, no source.</summary>
internal static class SchemeColumns
{
    public static readonly Column Scheme = new("scheme", needed: true);

    public static readonly Column Name = new("name");

    public static readonly Column Kind = new("kind");

    public static readonly Column Qualities = new("qualities", needed: true);

    public static readonly Column Patterns = new("patterns");

    public static readonly NumberColumn Sets = new("sets", 1, 20, whole: true, needed: true);

    public static readonly NumberColumn Repetitions = new("repetitions", 1, 50, whole: true, needed: true) { Synonyms = ["reps"] };

    public static readonly Column EachSide = new("each_side");

    public static readonly NumberColumn LeastPercent = new("least_percent", 1, 130);

    public static readonly NumberColumn MostPercent = new("most_percent", 1, 130);

    public static readonly NumberColumn Reserve = new("reserve", 0, 10);

    public static readonly QuantityColumn Rest = new("rest", UnitSets.Rests, 0, 900);

    public static readonly QuantityColumn Interval = new("interval", UnitSets.Rests, 10, 900);

    public static readonly QuantityColumn InnerRest = new("inner_rest", UnitSets.Rests, 1, 900);

    public static readonly NumberColumn PartnerRepetitions = new("partner_repetitions", 1, 20, whole: true);

    public static readonly NumberColumn Preference = new("preference", 1, 3, whole: true);

    public static readonly Column Source = new("source");

    public static readonly IReadOnlyList<Column> All =
        [Scheme, Name, Kind, Qualities, Patterns, Sets, Repetitions, EachSide, LeastPercent, MostPercent, Reserve, Rest, Interval, InnerRest, PartnerRepetitions, Preference, Source];
}

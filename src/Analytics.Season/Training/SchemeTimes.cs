using Analytics.Planning.Schemes;
using Analytics.Season.Columns;

namespace Analytics.Season.Training;

/// <summary>Rests of a scheme, s, and what stands in them. Each kind has its own.</summary>
internal readonly record struct SchemeTimes(double Rest, double Interval, double InnerRest, int PartnerRepetitions)
{
    /// <summary>Reads the cells; a fault in the row says what is wrong with them.</summary>
    public static SchemeTimes Read(RowCells row, SchemeKind kind, int sets)
    {
        var before = row.Faults.Count;
        double? rest = row.Quantity(SchemeColumns.Rest), interval = row.Quantity(SchemeColumns.Interval), inner = row.Quantity(SchemeColumns.InnerRest), partner = row.Number(SchemeColumns.PartnerRepetitions);
        if (row.Faults.Count > before) return default;
        bool onTheMinute = kind == SchemeKind.OnTheMinute, contrast = kind == SchemeKind.Contrast, pauses = contrast || kind == SchemeKind.Cluster;
        Need(row, SchemeColumns.Rest, rest, !onTheMinute && sets > 1, "there is no rest between sets", "Fill in rest_s.");
        Only(row, SchemeColumns.Rest, rest, !onTheMinute, "a scheme on the minute has no rest of its own: what is left of the interval is rest", "Empty the cell.");
        Need(row, SchemeColumns.Interval, interval, onTheMinute, "a scheme on the minute has no interval", "Fill in interval_s: 60 for a set each minute.");
        Only(row, SchemeColumns.Interval, interval, onTheMinute, "an interval is given, but the kind is not on_the_minute", "Write on_the_minute as kind, or empty the cell.");
        Need(row, SchemeColumns.InnerRest, inner, pauses, contrast ? "a contrast pair has no rest between the heavy lift and the reactive movement" : "a cluster has no rest between its repetitions", "Fill in inner_rest_s.");
        Only(row, SchemeColumns.InnerRest, inner, pauses, "an inner rest is given, but the kind is neither cluster nor contrast", "Correct the kind, or empty the cell.");
        Need(row, SchemeColumns.PartnerRepetitions, partner, contrast, "a contrast pair has no repetitions of the reactive movement", "Fill in partner_repetitions.");
        Only(row, SchemeColumns.PartnerRepetitions, partner, contrast, "repetitions of a partner are given, but the kind is not contrast", "Write contrast as kind, or empty the cell.");
        return new(rest ?? 0, interval ?? 0, inner ?? 0, (int)(partner ?? 0));
    }

    private static void Need(RowCells row, Column column, double? value, bool isNeeded, string reason, string remedy)
    {
        if (isNeeded && value is null) row.Wrong(column, reason, remedy);
    }

    private static void Only(RowCells row, Column column, double? value, bool isAllowed, string reason, string remedy)
    {
        if (!isAllowed && value is not null) row.Wrong(column, reason, remedy);
    }
}

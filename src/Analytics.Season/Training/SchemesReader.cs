using Analytics.Planning.Schemes;
using Analytics.Quantities;
using Analytics.Season.Cells;
using Analytics.Season.Columns;
using Analytics.Season.Intake;
using Analytics.Season.Tables;

namespace Analytics.Season.Training;

/// <summary>Reads <c>schemes.csv</c>.</summary>
internal static class SchemesReader
{
    /// <summary>The schemes that could be kept, in file order.</summary>
    public static List<SetScheme> Read(SeasonIntake intake, IEnumerable<Table> tables)
        => NamedRows.Read(intake, tables, SchemeColumns.All, SchemeColumns.Scheme, "scheme", Make);

    private static SetScheme Make(RowCells row, string id)
    {
        var kind = row.Known(SchemeColumns.Kind, TrainingWords.Schemes) ?? SchemeKind.Straight;
        row.NeedText(SchemeColumns.Qualities, "quality");
        int sets = row.NeedWhole(SchemeColumns.Sets, "number of sets"), repetitions = row.NeedWhole(SchemeColumns.Repetitions, "number of repetitions");
        double? least = row.Number(SchemeColumns.LeastPercent), most = row.Number(SchemeColumns.MostPercent);
        row.Rising(SchemeColumns.MostPercent, least, most, "range of per cent");
        var times = SchemeTimes.Read(row, kind, sets);
        if (kind == SchemeKind.Ramp && !(least < most) && !(least > most))
            row.Wrong(SchemeColumns.MostPercent, "a ramp builds up, so it needs a lighter first and a heavier last set", "Fill in least_percent and a greater most_percent, or write straight as kind.");
        var (name, source) = (row.Free(SchemeColumns.Name, "name", 100), row.Free(SchemeColumns.Source, "source"));
        return new SetScheme
        {
            Id = id,
            Name = name.Length > 0 ? name : id.Replace('_', ' '),
            Kind = kind,
            Qualities = row.KnownList(SchemeColumns.Qualities, TrainingWords.Qualities),
            Patterns = row.KnownList(SchemeColumns.Patterns, TrainingWords.Patterns),
            Sets = sets,
            Repetitions = repetitions,
            IsEachSide = row.Word(SchemeColumns.EachSide, Words.YesNo),
            LeastPercent = least ?? most,
            MostPercent = most ?? least,
            Reserve = row.Number(SchemeColumns.Reserve),
            Rest = Duration.FromSeconds(times.Rest),
            Interval = Duration.FromSeconds(times.Interval),
            InnerRest = Duration.FromSeconds(times.InnerRest),
            PartnerRepetitions = times.PartnerRepetitions,
            Preference = (int)(row.Number(SchemeColumns.Preference) ?? 2),
            Source = source.Length > 0 ? source : SetScheme.CommonPractice,
        };
    }
}

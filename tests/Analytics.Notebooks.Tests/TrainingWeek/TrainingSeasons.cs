using Analytics.Notebooks.Tests.TestingDay;
using Analytics.Notebooks.TrainingWeek;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.TrainingWeek;

/// <summary>Small seasons with a folder training.</summary>
internal static class TrainingSeasons
{
    // The latest testing day of the written season is Monday 2 March 2026, so the next week begins on the 9th.
    public const string Calendar = """
        date;start;kind;minutes;room;groups
        2026-03-09;16:00;max_strength;80;gym;
        2026-03-11;16:00;power;80;gym;

        """;

    public const string Rooms = """
        room;station;places
        gym;rack;8
        gym;platform;8
        gym;bench;8
        gym;boxes;6
        gym;hurdles;6
        gym;turf;6

        """;

    /// <summary>Twelve players in two groups, tested three times, with two sessions in the next week.</summary>
    public static WrittenSeason Written(Func<int, string>? name = null)
    {
        var season = name is null ? ReportSeasons.ThreeDays() : ReportSeasons.ThreeDays().Squad(name: name);
        return season.Write("training/calendar.csv", Calendar).Write("training/rooms.csv", Rooms);
    }

    public static TrainingWeekReport Open(WrittenSeason season, string week = "next", string phase = "auto", string athlete = "all")
        => TrainingWeekReport.Open(SeasonReader.Read(season.Folder), week, phase, athlete);
}

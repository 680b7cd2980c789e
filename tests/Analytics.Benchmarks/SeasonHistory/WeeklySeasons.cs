using System.Globalization;
using System.Text;

namespace Analytics.Benchmarks.SeasonHistory;

/// <summary>Writes seasons in a row of a squad of 120 that is tested every week: body mass, three jumps, one sprint.</summary>
internal static class WeeklySeasons
{
    public const int Athletes = 120, Weeks = 50, TrialsPerAthleteAndWeek = 5;

    /// <summary>Writes the seasons, oldest first.</summary>
    /// <param name="root">Folder that will hold them.</param>
    /// <param name="seasons">Seasons, one a calendar year.</param>
    /// <returns>Their folders, oldest first.</returns>
    public static IReadOnlyList<string> Write(string root, int seasons) => [.. Enumerable.Range(0, seasons).Select(i => WriteOne(Path.Combine(root, string.Create(CultureInfo.InvariantCulture, $"season-{2016 + i}")), 2016 + i))];

    private static string WriteOne(string folder, int year)
    {
        var random = new Random(year);
        var first = new DateOnly(year, 1, 4);
        string Day(int weeks) => first.AddDays(7 * weeks).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        Put(folder, "season.json", $"{{\"club\":\"Big Club\",\"season\":\"{year}\",\"from\":\"{year}-01-01\",\"to\":\"{year}-12-31\",\"retests\":[[\"{Day(0)}\",\"{Day(1)}\"]],"
            + "\"defaults\":{\"timing\":\"electronic\",\"start\":\"three_point_hand\",\"jump_method\":\"mat\"}}");
        Put(folder, "athletes.csv", "athlete_id,name,position,group\n" + string.Concat(Ids().Select((id, i) => $"{id},Athlete {id},P{i % 8},Group {i % 8}\n")));
        for (var week = 0; week < Weeks; week++)
        {
            var day = $"testing/{Day(week)}/";
            var gain = 1 + (0.0004 * week) + (0.01 * (year - 2016));
            double Near(double value, double share) => value * (1 + (share * ((2 * random.NextDouble()) - 1)));
            Table(folder, day + "body.csv", "athlete_id,mass_lb", 1, (t, id, _) => t.Append(CultureInfo.InvariantCulture, $"{id},{Near(Level(id, 230), 0.01):0.0}"));
            Table(folder, day + "jumps.csv", "athlete_id,jump,method,attempt,height_in", 3, (t, id, i) => t.Append(CultureInfo.InvariantCulture, $"{id},countermovement,mat,{i + 1},{Near(Level(id, 27) * gain, 0.05):0.0}"));
            Table(folder, day + "sprints.csv", "athlete_id,attempt,timing,start,t_5yd_s,t_10yd_s,t_20yd_s,t_40yd_s", 1, (t, id, i) =>
            {
                var pace = Near(Level(id, 1) / gain, 0.01);
                t.Append(CultureInfo.InvariantCulture, $"{id},{i + 1},electronic,three_point_hand,{1.05 * pace:0.00},{1.68 * pace:0.00},{2.75 * pace:0.00},{4.75 * pace:0.00}");
            });
        }

        return folder;
    }

    // An athlete's own level, the same in every season.
    private static double Level(string id, double usual) => usual * (0.9 + (0.2 * (int.Parse(id[1..], CultureInfo.InvariantCulture) * 37 % 100) / 100));

    private static IEnumerable<string> Ids() => Enumerable.Range(1, Athletes).Select(i => string.Create(CultureInfo.InvariantCulture, $"P{i:000}"));

    private static void Table(string folder, string name, string head, int each, Action<StringBuilder, string, int> row)
    {
        var text = new StringBuilder(head).Append('\n');
        foreach (var id in Ids())
            for (var i = 0; i < each; i++)
            {
                row(text, id, i);
                text.Append('\n');
            }

        Put(folder, name, text.ToString());
    }

    private static void Put(string folder, string name, string text)
    {
        var path = Path.Combine(folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }
}

using System.Globalization;
using System.Text;

namespace Analytics.Benchmarks.SeasonRows;

/// <summary>Writes a season of any size: a squad of 120, each day the same tables, as many days as the rows need.</summary>
internal static class BigSeason
{
    private const int Athletes = 120;

    // Rows of one athlete and day in each table.
    private const int Lifts = 12, Jumps = 14, Sprints = 8, Agility = 4, Throws = 3;

    /// <summary>Trial rows of one day.</summary>
    public const int RowsPerDay = Athletes * (1 + Lifts + Jumps + Sprints + Agility + Throws);

    /// <summary>Writes the season.</summary>
    /// <param name="folder">Folder to make.</param>
    /// <param name="days">Testing days.</param>
    /// <returns>Trial rows written.</returns>
    public static int Write(string folder, int days)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "season.json"), """{"club":"Big Club","season":"Long","from":"2026-01-01","to":"2027-12-31","defaults":{"timing":"electronic","start":"three_point_hand","jump_method":"mat"}}""");
        File.WriteAllText(Path.Combine(folder, "athletes.csv"), "athlete_id,name,position,group\n" + string.Concat(Ids().Select((id, i) => $"{id},Athlete {id},P{i % 8},Group {i % 8}\n")));
        var first = new DateOnly(2026, 1, 1);
        for (var day = 0; day < days; day++) WriteDay(Path.Combine(folder, "testing", first.AddDays(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)), new Random(day));
        return days * RowsPerDay;
    }

    private static IEnumerable<string> Ids() => Enumerable.Range(1, Athletes).Select(i => string.Create(CultureInfo.InvariantCulture, $"P{i:000}"));

    private static void WriteDay(string folder, Random random)
    {
        Directory.CreateDirectory(folder);
        double Near(double value, double share) => value * (1 + share * (2 * random.NextDouble() - 1));
        Table(folder, "body.csv", "athlete_id,mass_lb", 1, (t, id, _) => t.Append(CultureInfo.InvariantCulture, $"{id},{Near(230, 0.02):0.0}"));
        string[] lifts = ["back_squat", "bench_press", "power_clean", "deadlift"];
        Table(folder, "lifts.csv", "athlete_id,lift,set,load_lb,reps,rir", Lifts, (t, id, i) => t.Append(CultureInfo.InvariantCulture, $"{id},{lifts[i % 4]},{i / 4 + 1},{Near(300, 0.1):0},{1 + i / 4},"));
        Table(folder, "jumps.csv", "athlete_id,jump,method,attempt,height_in", Jumps, (t, id, i) => t.Append(CultureInfo.InvariantCulture, $"{id},{(i % 2 is 0 ? "countermovement" : "squat")},mat,{i / 2 + 1},{Near(27, 0.1):0.0}"));
        Table(folder, "sprints.csv", "athlete_id,attempt,timing,start,t_5yd_s,t_10yd_s,t_20yd_s,t_40yd_s", Sprints, (t, id, i) =>
        {
            var pace = Near(1, 0.02);
            t.Append(CultureInfo.InvariantCulture, $"{id},{i + 1},electronic,three_point_hand,{1.05 * pace:0.00},{1.68 * pace:0.00},{2.75 * pace:0.00},{4.75 * pace:0.00}");
        });
        Table(folder, "agility.csv", "athlete_id,test,attempt,timing,side,time_s", Agility, (t, id, i) => t.Append(CultureInfo.InvariantCulture, $"{id},pro_agility,{i + 1},electronic,left,{Near(4.4, 0.03):0.00}"));
        Table(folder, "throws.csv", "athlete_id,throw,attempt,ball_kg,distance_m", Throws, (t, id, i) => t.Append(CultureInfo.InvariantCulture, $"{id},overhead_back,{i + 1},5,{Near(14, 0.05):0.00}"));
    }

    private static void Table(string folder, string name, string head, int each, Action<StringBuilder, string, int> row)
    {
        var text = new StringBuilder(head).Append('\n');
        foreach (var id in Ids())
        {
            for (var i = 0; i < each; i++)
            {
                row(text, id, i);
                text.Append('\n');
            }
        }

        File.WriteAllText(Path.Combine(folder, name), text.ToString());
    }
}

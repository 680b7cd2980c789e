using System.Globalization;
using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Files;

/// <summary>Six weeks of training before the last testing day: four sessions a week. What is done depends on no gain and changes none.</summary>
public static class SessionSheet
{
    private static readonly DateOnly FirstMonday = new(2026, 4, 27);

    private static readonly (int Weekday, string Focus, int Minutes, double Effort, int Contacts)[] Week =
        [(0, "max_strength", 75, 7.5, 0), (1, "speed", 60, 6, 24), (3, "power", 65, 6.5, 40), (4, "reactive", 50, 5.5, 96)];

    public static Sheet Of(ulong seed, IReadOnlyList<Player> players, IReadOnlyList<Spell> spells)
    {
        var sheet = new Sheet("sessions", "date", "athlete_id", "focus", "minutes", "session_rpe", "jump_contacts", "lift", "sets", "repetitions", "load_lb");
        for (var week = 0; week < MainLift.Weeks; week++)
        {
            foreach (var (weekday, focus, minutes, effort, contacts) in Week)
            {
                var date = FirstMonday.AddDays(7 * week + weekday);
                foreach (var player in players)
                {
                    var random = RandomNumbers.For(seed, "session " + focus, player.Index, week);
                    var rpe = Math.Clamp(Math.Round(random.Normal(effort, 0.9)), 1, 10);
                    if (random.Chance(0.03) || spells.Any(s => s.Player == player.Index && s.Covers(date))) continue;
                    // Heavy players do fewer jumps.
                    var jumps = player.Norm.BoxInches > 12 ? contacts : contacts * 2 / 3;
                    Add(sheet, seed, player, week, date, focus, [minutes, rpe, jumps]);
                }
            }
        }

        return sheet;
    }

    /// <summary>The summary stands in the row of the first lift; further lifts have rows of their own.</summary>
    private static void Add(Sheet sheet, ulong seed, Player player, int week, DateOnly date, string focus, object?[] summary)
    {
        var day = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var lifts = MainLift.Of(focus);
        if (lifts.Count == 0) sheet.Add([day, player.Id, focus, .. summary, null, null, null, null]);
        for (var i = 0; i < lifts.Count; i++)
        {
            var (sets, repetitions, pounds) = lifts[i].Of(seed, player, week);
            sheet.Add([day, player.Id, focus, .. i == 0 ? summary : [null, null, null], lifts[i].Lift, sets, repetitions, pounds]);
        }
    }
}

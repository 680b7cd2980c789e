using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Mess;

/// <summary>A spell in which an athlete is not fully available.</summary>
public sealed record Spell(int Player, DateOnly From, DateOnly To, string Status, string Note)
{
    public bool Covers(DateOnly date) => date >= From && date <= To;
}

/// <summary>Injuries, illness and absence over the season.</summary>
public static class Availability
{
    public const string Injured = "injured", Limited = "limited", Ill = "ill", Absent = "absent";

    private const string WithMedicalStaff = "with medical staff", UpperBody = "upper body only";

    /// <summary>Three of the five running backs are out in April, whatever the seed.</summary>
    private static readonly Spell[] RunningBacks =
    [
        new(35, new(2026, 3, 27), new(2026, 5, 8), Injured, WithMedicalStaff),
        new(36, new(2026, 4, 6), new(2026, 5, 15), Injured, WithMedicalStaff),
        new(38, new(2026, 4, 9), new(2026, 5, 17), Injured, WithMedicalStaff),
        new(38, new(2026, 5, 18), new(2026, 6, 14), Limited, UpperBody),
    ];

    /// <summary>Whether an athlete is one of those hurt in spring in every season.</summary>
    public static bool HurtInSpring(int player) => Array.Exists(RunningBacks, s => s.Player == player);

    public static IReadOnlyList<Spell> Draw(ulong seed, IReadOnlyList<Player> players)
    {
        var spells = new List<Spell>();
        foreach (var player in players)
        {
            if (HurtInSpring(player.Index)) spells.AddRange(RunningBacks.Where(s => s.Player == player.Index));
            else spells.AddRange(DrawOne(seed, player.Index));
        }

        return spells;
    }

    private static IEnumerable<Spell> DrawOne(ulong seed, int player)
    {
        var random = RandomNumbers.For(seed, "availability", player);
        if (random.Chance(0.05))
        {
            var from = SeasonCalendar.SeasonStart.AddDays(random.Below(140));
            var back = from.AddDays(14 + random.Below(28));
            yield return new(player, from, back, Injured, WithMedicalStaff);
            yield return new(player, back.AddDays(1), back.AddDays(10), Limited, UpperBody);
            yield break;
        }

        foreach (var day in SeasonCalendar.TestingDays)
        {
            if (!random.Chance(0.025)) continue;
            if (random.Chance(0.5)) yield return new(player, day.AddDays(-1), day.AddDays(1), Ill, "");
            else yield return new(player, day, day, Absent, "excused");
        }
    }
}

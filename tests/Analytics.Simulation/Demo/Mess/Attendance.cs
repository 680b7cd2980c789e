using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Mess;

/// <summary>Who does which test on which day, how often, and by which clock.</summary>
public sealed class Attendance(ulong seed, bool withMess, IReadOnlyList<Spell> spells)
{
    /// <summary>Tests an athlete with limited availability may do.</summary>
    private static readonly string[] UpperBodyTests = ["body", "bench_press", "overhead_back"];

    public bool Does(Player player, int day, string test)
    {
        if (!withMess) return true;
        var date = SeasonCalendar.DateOf(day);
        foreach (var spell in spells)
        {
            if (spell.Player != player.Index || !spell.Covers(date)) continue;
            if (spell.Status != Availability.Limited || !UpperBodyTests.Contains(test)) return false;
        }

        // The retest is called on short notice: most of the squad comes.
        if (day == SeasonCalendar.Retest && RandomNumbers.For(seed, "retest", player.Index).Chance(0.12)) return false;
        if (day == SeasonCalendar.EndRetest && RandomNumbers.For(seed, "end retest", player.Index).Chance(0.12)) return false;
        return !RandomNumbers.For(seed, "missing " + test, player.Index, day).Chance(test == "body" ? 0.02 : 0.05);
    }

    /// <summary>Attempts made: sometimes one fewer than usual.</summary>
    public int Attempts(Player player, int day, string test, int usual)
        => withMess && usual > 1 && RandomNumbers.For(seed, "short " + test, player.Index, day).Chance(0.12) ? usual - 1 : usual;

    /// <summary>In April the gates' battery fails for the last few to run.</summary>
    public bool HandTimed(Player player, int day)
        => withMess && day == SeasonCalendar.April && player.Index >= 53;
}

using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.Demo.Testing;

/// <summary>One athlete on one testing day, as a test meets him.</summary>
/// <param name="Seed">Seed of the season.</param>
/// <param name="Day">Testing day, from 0.</param>
/// <param name="Player">The athlete.</param>
/// <param name="Form">His ability as it shows that day.</param>
/// <param name="Attendance">Who does what.</param>
public sealed record TestBench(ulong Seed, int Day, Player Player, Ability Form, Attendance Attendance)
{
    public bool Does(string test) => Attendance.Does(Player, Day, test);

    public int Attempts(string test, int usual) => Attendance.Attempts(Player, Day, test, usual);

    /// <summary>Random numbers of this athlete, this day and this test alone.</summary>
    public RandomNumbers Random(string test) => RandomNumbers.For(Seed, test, Player.Index, Day);
}

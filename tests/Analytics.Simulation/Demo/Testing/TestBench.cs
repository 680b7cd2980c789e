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
    /// <summary>
    /// Who takes his tests: two people who take turns down the squad list, after every player on the first day, every two on the second, every three on the third. So on any two days a part of the squad
    /// changes its tester, a quarter each way between the first two. Who tests has no effect on any result.
    /// </summary>
    public string Tester => Player.Index / (Day + 1) % 2 == 0 ? "KB" : "RM";

    public bool Does(string test) => Attendance.Does(Player, Day, test);

    public int Attempts(string test, int usual) => Attendance.Attempts(Player, Day, test, usual);

    /// <summary>Random numbers of this athlete, this day and this test alone.</summary>
    public RandomNumbers Random(string test) => RandomNumbers.For(Seed, test, Player.Index, Day);
}

using Analytics.Simulation.Clips.Motion;
using Analytics.Simulation.Demo.Mess;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Demo.Truth;

/// <summary>What is true about a generated season, and what was spoilt in its files on purpose.</summary>
public sealed record SeasonTruth
{
    public required ulong Seed { get; init; }
    public required DemoOptions Options { get; init; }
    public required IReadOnlyList<Player> Players { get; init; }
    public required IReadOnlyList<Spell> Spells { get; init; }
    public required IReadOnlyList<RunTruth> Runs { get; init; }
    public required IReadOnlyList<ContactTruth> Contacts { get; init; }
    public required IReadOnlyList<TypingError> Errors { get; init; }
}

/// <summary>What one sprint really was.</summary>
/// <param name="Day">Testing day, from 0.</param>
/// <param name="Player">Index of the athlete.</param>
/// <param name="Attempt">Attempt, from 1.</param>
/// <param name="SpeedMetresPerSecond">Asymptotic speed of this run.</param>
/// <param name="TimeConstantSeconds">Time constant of this run.</param>
/// <param name="StartLeadMetres">Distance moved before the clock started.</param>
public sealed record RunTruth(int Day, int Player, int Attempt, double SpeedMetresPerSecond, double TimeConstantSeconds, double StartLeadMetres);

/// <summary>What one repetition on film really was.</summary>
/// <param name="Day">Testing day, from 0.</param>
/// <param name="Player">Index of the athlete.</param>
/// <param name="Attempt">Attempt, from 1.</param>
/// <param name="Clip">Name of the clip.</param>
/// <param name="Run">The motion.</param>
public sealed record ContactTruth(int Day, int Player, int Attempt, string Clip, RunIntoContact Run);

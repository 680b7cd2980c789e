using Analytics.Season;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.ErrorRates;

namespace Analytics.Simulation.WeekStudy.Squads;

/// <summary>A generated season with its calendar, rooms and restrictions, read through the season reader, and the truth behind it.</summary>
/// <param name="Players">The players with everything that is true about them.</param>
/// <param name="Season">What was read.</param>
public sealed record WeekSeason(IReadOnlyList<Player> Players, SeasonData Season)
{
    /// <summary>The last testing day before the week: what is true on it is what the week should serve.</summary>
    public const int Day = SeasonCalendar.June;

    public static WeekSeason Draw(ulong seed, IReadOnlyList<PlantedDeficit> deficits)
    {
        var generated = DemoSeason.Generate(seed, new DemoOptions { WithClips = false, Deficits = deficits });
        return new(generated.Truth.Players, ScratchSeason.Read(generated.Files));
    }
}

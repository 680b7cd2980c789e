using Analytics.Simulation.Demo.Squad;
using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.WeekStudy.Squads;

/// <summary>Players of the middle of their groups who are made truly worse in one quality each, in every test of it.</summary>
/// <param name="Chosen">Quality by index of the player.</param>
/// <param name="Deficits">What is changed.</param>
public sealed record Planting(IReadOnlyDictionary<int, StudiedQuality> Chosen, IReadOnlyList<PlantedDeficit> Deficits)
{
    /// <summary>Players a quality.</summary>
    public const int Players = 4;

    /// <summary>SDs between players of a group by which each is made worse.</summary>
    public const double Size = 1.5;

    /// <summary>Nearest the middle a player must be to be chosen, in SDs: so that he has no deficit before and has one after.</summary>
    public const double Near = 0.5;

    /// <summary>Fewest players of a group in which somebody is chosen: in a smaller one he would take the median down with him.</summary>
    public const int Group = 8;

    /// <summary>Draws who gets which deficit: nobody two, and nobody of his group the same.</summary>
    /// <param name="seed">Seed of the season.</param>
    /// <param name="squad">The squad as drawn.</param>
    public static Planting Draw(ulong seed, IReadOnlyList<Player> squad)
    {
        var chosen = new SortedDictionary<int, StudiedQuality>();
        var deficits = new List<PlantedDeficit>();
        var large = squad.GroupBy(p => p.Group).Where(g => g.Count() >= Group).SelectMany(g => g).ToList();
        foreach (var quality in StudiedQuality.All)
        {
            var standing = TrueStanding.Of(quality, squad);
            var random = RandomNumbers.For(seed, "planted " + quality.Name);
            var free = large.Where(p => !chosen.ContainsKey(p.Index) && Math.Abs(standing.Behind(p)) <= Near).ToList();
            for (var i = 0; i < Players && free.Count > 0; i++)
            {
                var player = free[random.Below(free.Count)];
                free.RemoveAll(p => p.Group == player.Group);
                chosen.Add(player.Index, quality);
                deficits.Add(new(player.Index, quality.Parts.ToDictionary(p => p.Drawn, p => p.Change(player, WeekSeason.Day, Size * TrueStanding.Of(p, squad).Deviation))));
            }
        }

        return new(chosen, deficits);
    }
}

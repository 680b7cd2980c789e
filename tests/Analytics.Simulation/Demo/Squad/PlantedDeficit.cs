namespace Analytics.Simulation.Demo.Squad;

/// <summary>A player made truly worse than he was drawn, on every day of the season; his luck, his gains and everybody else stay what they were.</summary>
/// <param name="Player">Index of the player.</param>
/// <param name="Gains">Relative changes as <see cref="Ability.After"/> takes them: below 0 is worse, for times too.</param>
public sealed record PlantedDeficit(int Player, IReadOnlyDictionary<TrainedQuality, double> Gains)
{
    /// <summary>The player with the deficit.</summary>
    public Player In(Player player)
        => player with { Baseline = player.Baseline.After(quality => Gains.GetValueOrDefault(quality)) };
}

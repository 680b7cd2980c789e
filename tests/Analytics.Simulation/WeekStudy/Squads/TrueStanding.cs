using Analytics.Simulation.Demo.Squad;
using Analytics.Statistics.Summaries;

namespace Analytics.Simulation.WeekStudy.Squads;

/// <summary>Where players truly stand in their groups in one figure, on the last testing day.</summary>
public sealed class TrueStanding
{
    private readonly Dictionary<string, double> _medians;
    private readonly Func<Player, double> _value;
    private readonly bool _lowerIsBetter;

    private TrueStanding(IReadOnlyList<Player> players, Func<Player, double> value, bool lowerIsBetter, double? deviation)
    {
        (_value, _lowerIsBetter) = (value, lowerIsBetter);
        _medians = players.GroupBy(p => p.Group).ToDictionary(g => g.Key, g => Quantiles.Median([.. g.Select(value)]), StringComparer.Ordinal);
        Deviation = deviation ?? WithinGroups(players, value);
    }

    /// <summary>SD of the true values within groups, one for all groups, in the figure's unit.</summary>
    public double Deviation { get; }

    /// <summary>Of a quality, by the test that speaks for it.</summary>
    /// <param name="quality">The quality.</param>
    /// <param name="players">The squad.</param>
    /// <param name="deviation">SD within groups where another one than that of these players is meant.</param>
    public static TrueStanding Of(StudiedQuality quality, IReadOnlyList<Player> players, double? deviation = null)
        => new(players, p => quality.True(p, WeekSeason.Day), quality.LowerIsBetter, deviation);

    /// <summary>Of one figure of the generator.</summary>
    public static TrueStanding Of(DrawnPart part, IReadOnlyList<Player> players)
        => new(players, p => part.Value(p, p.On(WeekSeason.Day)), part.IsTime, null);

    /// <summary>How far he is truly worse than the median of his group, in SDs; below 0 when better.</summary>
    public double Behind(Player player)
    {
        var over = _value(player) - _medians[player.Group];
        return (_lowerIsBetter ? over : -over) / Deviation;
    }

    private static double WithinGroups(IReadOnlyList<Player> players, Func<Player, double> value)
    {
        var groups = players.GroupBy(p => p.Group).Select(g => g.Select(value).ToList()).ToList();
        return Math.Sqrt(groups.Sum(g => g.Sum(v => Math.Pow(v - g.Average(), 2))) / (players.Count - groups.Count));
    }
}

using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;

namespace Analytics.Metrics.Bench;

/// <summary>One value an athlete on one occasion: the mean of his values on its days.</summary>
internal sealed class OccasionValues
{
    private readonly Dictionary<string, double> _values;

    private OccasionValues(Dictionary<string, double> values) => _values = values;

    public IEnumerable<string> Athletes => _values.Keys;

    public int Count => _values.Count;

    public double? Of(string athleteId) => _values.TryGetValue(athleteId, out var value) ? value : null;

    /// <summary>The occasion on which most athletes have a value, the first of equals; null without any.</summary>
    public static SeasonPeriod? Fullest(SeasonValues values, SquadProfile profile)
        => values.Values.Count == 0 ? null : SeasonPeriods.Occasions(values.Dates, profile.Retests).All.MaxBy(p => On(values, p).Count);

    public static OccasionValues On(SeasonValues values, SeasonPeriod occasion) => new(values.Values
        .Where(v => v.Date >= occasion.From && v.Date <= occasion.To)
        .GroupBy(v => v.AthleteId, StringComparer.Ordinal)
        .ToDictionary(g => g.Key, g => g.Average(v => v.Value), StringComparer.Ordinal));
}

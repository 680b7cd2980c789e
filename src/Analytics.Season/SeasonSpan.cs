namespace Analytics.Season;

/// <summary>An earlier season that was joined.</summary>
/// <param name="Name">Its name, with a number where two have the same; the first part of the path of each of its files. Untrusted text: always escape.</param>
/// <param name="From">First day of the season.</param>
/// <param name="To">Last day of the season.</param>
public sealed record SeasonSpan(string Name, DateOnly From, DateOnly To);

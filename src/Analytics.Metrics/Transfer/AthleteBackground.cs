namespace Analytics.Metrics.Transfer;

/// <summary>What an athlete brought along that may shape gains in everything.</summary>
/// <param name="TrainingYears">Years of regular training; null when not known.</param>
/// <param name="BirthYear">Year of birth, a stand-in where training years are not known; null when not known.</param>
public sealed record AthleteBackground(double? TrainingYears = null, int? BirthYear = null);

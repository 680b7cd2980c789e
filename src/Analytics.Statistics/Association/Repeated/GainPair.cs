namespace Analytics.Statistics.Association.Repeated;

/// <summary>An athlete's gain in two measures over the whole span, less the squad's.</summary>
/// <param name="Athlete">Whose they are.</param>
/// <param name="X">Gain in x beyond the days' effects, in units of x.</param>
/// <param name="Y">Gain in y beyond the days' effects, in units of y.</param>
/// <param name="Weight">How much it counts: less when seen on fewer or closer days.</param>
public sealed record GainPair(string Athlete, double X, double Y, double Weight);

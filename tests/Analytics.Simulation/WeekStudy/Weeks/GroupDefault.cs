namespace Analytics.Simulation.WeekStudy.Weeks;

/// <summary>The balanced default of one group.</summary>
/// <param name="Group">Position group.</param>
/// <param name="Sessions">Sessions with own work in which somebody does the default.</param>
/// <param name="Qualities">Different qualities these defaults are of.</param>
/// <param name="IsOneEach">Whether each session has one default at most among players without a called need.</param>
public sealed record GroupDefault(string Group, int Sessions, int Qualities, bool IsOneEach);

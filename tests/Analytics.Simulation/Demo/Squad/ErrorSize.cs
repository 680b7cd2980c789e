namespace Analytics.Simulation.Demo.Squad;

/// <summary>Sizes of true change used to measure hit rates, in typical errors of the test.</summary>
public static class ErrorSize
{
    /// <summary>About the smallest change two single tests can tell from nothing half of the time.</summary>
    public const double Small = 3;

    /// <summary>A change two single tests seldom miss.</summary>
    public const double Large = 5;
}

namespace Analytics.Planning.Solving;

/// <summary>How long a plan is sought.</summary>
/// <param name="Effort">Work allowed, in the solver's own units, which do not depend on the machine: the same input gives the same plan. About a second and a half each on a usual machine.</param>
/// <param name="Clock">Seconds by the clock after which the search stops whatever was found; a plan that came so may differ on another machine, and says so.</param>
public sealed record PlanOptions(double Effort = 3, double Clock = 60)
{
    /// <summary>Share of the bound below which a better plan is not sought further.</summary>
    public double GoodEnough { get; init; } = 0.01;

    /// <summary>Where the search begins; another seed may find another plan that is as good.</summary>
    public int Seed { get; init; } = 7;
}

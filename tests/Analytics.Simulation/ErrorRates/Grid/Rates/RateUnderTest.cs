using Analytics.Simulation.Randomness;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Anything else that states a rate: a flag, a test, a probability. Every class of this kind is found and measured; to add one, add a file.</summary>
public abstract class RateUnderTest
{
    public abstract string Name { get; }

    /// <summary>What it claims, and what was counted.</summary>
    public abstract string Claim { get; }

    public abstract IReadOnlyList<RateCase> Cases { get; }
}

/// <summary>One case.</summary>
/// <param name="Label">What is special about it.</param>
/// <param name="Nominal">The rate it states; null when it states none.</param>
/// <param name="Draw">One draw.</param>
/// <param name="ClosedForm">The rate known by theory; null where there is none.</param>
/// <param name="Dearness">By how much draws without a closed form are cut further, where a draw is dear.</param>
public sealed record RateCase(string Label, double? Nominal, Func<RandomNumbers, Share> Draw, double? ClosedForm = null, int Dearness = 1);

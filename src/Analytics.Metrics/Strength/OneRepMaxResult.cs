using System.Globalization;
using Analytics.Metrics.Catalogue;
using Analytics.Quantities;
using Analytics.Statistics;

namespace Analytics.Metrics.Strength;

/// <summary>A measured or estimated 1RM with everything needed to judge it.</summary>
public sealed record OneRepMaxResult
{
    /// <summary>The 1RM.</summary>
    public required Mass Value { get; init; }

    /// <summary>Whether the load was lifted once, to failure: nothing was extrapolated.</summary>
    public required bool IsMeasured { get; init; }

    /// <summary>Error that the equation brings in, one standard error; null for a measured 1RM, which has no such error.</summary>
    public required Mass? StandardError { get; init; }

    /// <summary>The same error in its parts, in kg: what lasts and what is made anew each day; null for a measured 1RM.</summary>
    public EquationError? ErrorParts { get; init; }

    /// <summary>95 % interval of an estimate, in kg, never below the load lifted; null for a measured 1RM.</summary>
    public required Interval? Interval { get; init; }

    /// <summary>Sets behind it.</summary>
    public int N { get; init; } = 1;

    /// <summary>How it was made, in words a report can print.</summary>
    public required string Method { get; init; }

    /// <summary>The equation used; null for a measured 1RM.</summary>
    public required OneRepMaxFormula? Formula { get; init; }

    /// <summary>Disagreement between the equations; null for a measured 1RM.</summary>
    public required FormulaSpread? Spread { get; init; }

    /// <summary>Repetitions done plus repetitions left in reserve.</summary>
    public required double EffectiveRepetitions { get; init; }

    /// <summary>Load of the set.</summary>
    public required Mass Load { get; init; }

    /// <summary>Why the value is doubtful, in words; null when it is not.</summary>
    public required string? Doubt { get; init; }

    /// <summary>Whether <see cref="Doubt"/> says anything.</summary>
    public bool IsDoubtful => Doubt is not null;

    /// <summary>"measured" or "estimated from 5 repetitions", for a table.</summary>
    public string HowMade => IsMeasured ? "measured"
        : string.Create(CultureInfo.InvariantCulture, $"estimated from {EffectiveRepetitions:0.##} repetitions");

    /// <summary>The same as a plain estimate in kg.</summary>
    public Estimate ToEstimate() => new(Value.Kilograms, StandardError?.Kilograms, Interval, N, Method);
}

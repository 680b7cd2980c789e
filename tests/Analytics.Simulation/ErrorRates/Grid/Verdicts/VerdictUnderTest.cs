using Analytics.Statistics.Change;

namespace Analytics.Simulation.ErrorRates.Grid.Verdicts;

/// <summary>A rule that gives one of four verdicts on an athlete's change. Every class of this kind is found and measured; to add one, add a file.</summary>
public abstract class VerdictUnderTest
{
    public abstract string Name { get; }

    /// <summary>What it claims.</summary>
    public abstract string Claim { get; }

    /// <summary>False-flag rate it states for unchanged athletes.</summary>
    public abstract double Nominal { get; }

    public virtual IReadOnlyList<ChangeCase> Cases => ChangeCase.All;

    /// <summary>Rate of clear verdicts known by theory; null where there is none.</summary>
    /// <param name="the">The case.</param>
    /// <param name="trueChange">In typical errors.</param>
    public virtual double? ClosedForm(ChangeCase the, double trueChange) => null;

    /// <summary>The verdict when the athlete truly changed by this many typical errors.</summary>
    public abstract Verdict Judge(in ChangeDraw draw, double trueChange);
}

/// <summary>A rule of the library, given the worthwhile change.</summary>
/// <param name="rule">The rule.</param>
public abstract class LibraryRule(VerdictRule rule) : VerdictUnderTest
{
    public override double Nominal => rule.LargestFalseFlagRate;

    public override double? ClosedForm(ChangeCase the, double trueChange) => the.Errors == Tables.ErrorKind.Normal
        ? rule.ClearRate(trueChange * the.Rescale, the.Worthwhile * the.Rescale, the.DegreesOfFreedom)
        : null;

    public override Verdict Judge(in ChangeDraw draw, double trueChange) => rule.Judge(
        IndividualChange.Between(draw.Before, draw.Unchanged + trueChange, draw.TypicalError, draw.Case.DegreesOfFreedom, draw.Case.Baseline),
        draw.Case.Worthwhile);
}

public sealed class BeyondErrorVerdict() : LibraryRule(BeyondErrorRule.Standard)
{
    public override string Name => "Beyond error (the report's rule)";

    public override string Claim => "clear when the 95 % interval leaves out 0 and the change exceeds the smallest worthwhile one";
}

public sealed class BeyondWorthwhileVerdict() : LibraryRule(new BeyondWorthwhileRule { Level = 0.95 })
{
    public override string Name => "Beyond the worthwhile change (strict)";

    public override string Claim => "clear when the whole 95 % interval lies beyond the smallest worthwhile change";
}

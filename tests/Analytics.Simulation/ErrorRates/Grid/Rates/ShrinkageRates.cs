using Analytics.Simulation.Randomness;
using Analytics.Statistics.Distributions;
using Analytics.Statistics.Shrinkage;

namespace Analytics.Simulation.ErrorRates.Grid.Rates;

/// <summary>Value ± 1.96 standard errors after shrinkage; errors between 0.7 and 1.4.</summary>
public abstract class ShrinkageRates : RateUnderTest
{
    public override string Claim => "shrunken value \u00B1 1.96 standard errors holds the true value in 95 %";

    public override IReadOnlyList<RateCase> Cases =>
    [
        .. from sd in new[] { 0.5, 1, 2 }
           from k in new[] { 5, 10, 20, 60 }
           select new RateCase(FormattableString.Invariant($"{k} values, true SD {sd} errors"), 0.95, random => Covered(k, sd, random)),
    ];

    protected abstract IReadOnlyList<Shrunken> Shrink(IReadOnlyList<double> values, IReadOnlyList<double> errors);

    private Share Covered(int k, double sd, RandomNumbers random)
    {
        var truth = new double[k];
        var values = new double[k];
        var errors = new double[k];
        for (var i = 0; i < k; i++)
        {
            truth[i] = sd * random.Normal();
            errors[i] = 0.7 + 0.7 * random.Uniform();
            values[i] = random.Normal(truth[i], errors[i]);
        }

        var shrunken = Shrink(values, errors);
        return new(truth.Zip(shrunken).Count(p => Math.Abs(p.First - p.Second.Value) <= NormalLaw.TwoSided(0.95) * p.Second.StandardError), k);
    }
}

public sealed class EmpiricalBayesRates : ShrinkageRates
{
    public override string Name => "Empirical Bayes";

    public override string Claim => base.Claim + ", if centre and spread were known, which they are not";

    protected override IReadOnlyList<Shrunken> Shrink(IReadOnlyList<double> values, IReadOnlyList<double> errors) => EmpiricalBayes.Of(values, errors).Values;
}

public sealed class MorrisRates : ShrinkageRates
{
    public override string Name => "Empirical Bayes for a few groups (Morris)";

    protected override IReadOnlyList<Shrunken> Shrink(IReadOnlyList<double> values, IReadOnlyList<double> errors) => MorrisShrinkage.Of(values, errors).Values;
}

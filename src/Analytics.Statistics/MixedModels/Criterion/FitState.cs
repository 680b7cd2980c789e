using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>A finished search, in the units the search works in: y divided by <see cref="Scale"/>, X orthonormal, Z by <see cref="RandomBasis"/>.</summary>
internal sealed class FitState
{
    public required ModelDesign Design { get; init; }

    public required bool Reml { get; init; }

    public required OrthonormalColumns Fixed { get; init; }

    public required RandomBasis Random { get; init; }

    /// <summary>Names of the groups by number.</summary>
    public required IReadOnlyList<string> GroupNames { get; init; }

    /// <summary>Group of each row.</summary>
    public required int[] GroupOfRow { get; init; }

    /// <summary>Unit of the response in the search.</summary>
    public required double Scale { get; init; }

    /// <summary>Least-squares coefficients of Q, in units of <see cref="Scale"/>, that were taken out of y.</summary>
    public required double[] TakenOut { get; init; }

    /// <summary>Evaluated at the maximum.</summary>
    public required VarianceCriterion Criterion { get; init; }

    public required CriterionDerivatives Derivatives { get; init; }

    public required FactorMap Map { get; init; }

    /// <summary>The relative factor at the maximum.</summary>
    public required double[] Eta { get; init; }

    /// <summary>Steps of the search.</summary>
    public required int Iterations { get; init; }

    public int Rows => Criterion.Data.Rows;

    public int P => Criterion.Data.P;

    public int Q => Criterion.Data.Q;

    /// <summary>N − p for REML, N for ML.</summary>
    public int Nu => Reml ? Rows - P : Rows;

    /// <summary>Residual variance in units of <see cref="Scale"/> squared.</summary>
    public double Variance => Criterion.Rss / Nu;

    /// <summary>Minus twice the log-likelihood in the units of the data.</summary>
    public double MinusTwoLogLikelihood => ToData((Nu * Math.Log(Variance)) + Criterion.LogDetV + (Reml ? Criterion.LogDetX : 0) + Nu);

    /// <summary>Adds the constants that the search leaves out.</summary>
    public double ToData(double value)
    {
        var logDetR = 0.0;
        for (var j = 0; j < P; j++) logDetR += 2 * Math.Log(Fixed.R[(j * P) + j]);
        return value + (Nu * (Math.Log(2 * Math.PI) + (2 * Math.Log(Scale)))) + (Reml ? logDetR : 0) - Design.LogWeights;
    }

    /// <summary>m = L⁻¹ of the weights in terms of Q: variances of contrasts are σ² m'm.</summary>
    public double[] White(IReadOnlyList<double> weights)
    {
        double[] m = [.. weights];
        Fixed.ToQ(m);
        Criterion.Whiten(m);
        return m;
    }

    /// <summary>Fixed effects of X in the units of the data.</summary>
    public double[] FixedEffects()
    {
        var beta = Criterion.FixedEffects();
        for (var j = 0; j < P; j++) beta[j] = Scale * (beta[j] + TakenOut[j]);
        Fixed.Back(beta);
        return beta;
    }
}

using Analytics.Statistics.MixedModels.Algebra;

namespace Analytics.Statistics.MixedModels.Criterion;

/// <summary>From a design to a fit: checks that the data can answer, reduces them, searches.</summary>
internal static class MixedSolver
{
    // Residuals smaller than this part of the response are rounding.
    private const double Rounding = 1e-14;

    public static MixedFit Fit(ModelDesign design, bool reml)
    {
        var groups = new GroupNumbers(design.Groups);
        MixedFit End(MixedEnding ending, string words, MixedModel? model = null)
            => new() { Ending = ending, Explanation = words, Model = model, Rows = design.Rows, Groups = groups.Names.Count };

        if (SolverChecks.BeforeFitting(design, groups) is { } early) return End(early.Ending, early.Words);
        var columns = design.FixedColumns;
        var x = OrthonormalColumns.Of(columns);
        if (x.Dependent >= 0)
            return End(MixedEnding.CollinearFixedEffects, SolverChecks.Collinear("fixed", design.FixedNames, x, columns));
        var random = RandomBasis.Of(design.RandomColumns, design.IsCorrelated);
        if (random.Collinear is { } c)
            return End(MixedEnding.CollinearRandomEffects, SolverChecks.Collinear("random", design.RandomNames, c, design.RandomColumns));

        var y = (double[])design.Response.Clone();
        var largest = y.Max(Math.Abs);
        var takenOut = x.TakeOut(y);
        var scale = Math.Sqrt(y.Sum(v => v / (largest > 0 ? largest : 1) * (v / (largest > 0 ? largest : 1))) / y.Length) * largest;
        if (!(scale > Rounding * largest)) return End(MixedEnding.NoVariation, SolverChecks.NoVariation(design));
        for (var i = 0; i < y.Length; i++) y[i] /= scale;
        for (var j = 0; j < takenOut.Length; j++) takenOut[j] /= scale;

        var data = GroupReduction.Of(x.Q, random.Columns, y, groups.OfRow, groups.Names.Count);
        if (SolverChecks.AfterReducing(design, data, largest / scale) is { } late) return End(late.Ending, late.Words);
        var criterion = new VarianceCriterion(data);
        var map = FactorMap.Cholesky(data.Q, design.IsCorrelated);
        if (SolverChecks.NotIdentified(design, criterion, map) is { } words) return End(MixedEnding.NotIdentified, words);

        var objective = new ProfiledObjective(criterion, map, reml);
        var end = Search(objective, data.Q, design.IsCorrelated);
        if (!end.Converged)
            return End(MixedEnding.NotConverged, $"The search for the variances did not settle in {end.Iterations} steps. Use fewer random effects, or look for an outlier.");

        objective.Value(end.X);
        var state = new FitState
        {
            Design = design, Reml = reml, Fixed = x, Random = random, GroupNames = groups.Names, GroupOfRow = groups.OfRow, Scale = scale,
            TakenOut = takenOut, Criterion = criterion, Derivatives = CriterionDerivatives.At(criterion), Map = map, Eta = end.X, Iterations = end.Iterations,
        };
        var model = new MixedModel(state);
        return model.Boundary.Count == 0
            ? End(MixedEnding.Converged, $"converged in {end.Iterations} steps", model)
            : End(MixedEnding.OnBoundary, string.Join(" ", model.Boundary), model);
    }

    private static SearchEnd Search(ProfiledObjective objective, int q, bool correlated)
    {
        var identity = RandomPairs.All(q).Where(c => correlated || c.I == c.J).Select(c => c.I == c.J ? 1.0 : 0).ToArray();
        var end = NewtonSearch.Minimise(objective, identity);
        if (q == 0 || objective.Value(new double[identity.Length]) >= end.Value - 1e-9) return end;
        // No random effects at all would be better than what was found: there is a second valley near 0.
        var near = NewtonSearch.Minimise(objective, [.. identity.Select(v => 0.05 * v)]);
        return near.Value < end.Value ? near : end;
    }
}

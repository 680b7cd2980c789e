using Analytics.Statistics.MixedModels.Inference;

namespace Analytics.Statistics.MixedModels;

/// <summary>Fitted values and predictions.</summary>
public static class MixedModelPredictions
{
    /// <summary>Fitted value Xβ̂ + Zb̂ of every row, in the order of the rows.</summary>
    /// <param name="model">The model.</param>
    public static IReadOnlyList<double> FittedValues(this MixedModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var (state, fitted) = (model.State, new double[model.Rows]);
        var gamma = state.Criterion.FixedEffects();
        for (var j = 0; j < state.P; j++)
            for (var i = 0; i < fitted.Length; i++) fitted[i] += (gamma[j] + state.TakenOut[j]) * state.Fixed.Q[j][i];
        var predictor = new GroupPredictor(state);
        var effects = Enumerable.Range(0, model.Groups).Select(g => state.Q == 0 ? [] : predictor.Of(g).Effects).ToArray();
        for (var i = 0; i < fitted.Length; i++)
        {
            for (var k = 0; k < state.Q; k++) fitted[i] += state.Random.Columns[k][i] * effects[state.GroupOfRow[i]][k];
            fitted[i] = state.Design.Unweighted(fitted[i] * state.Scale, i);
        }

        return fitted;
    }

    /// <summary>Response minus fitted value of every row.</summary>
    /// <param name="model">The model.</param>
    public static IReadOnlyList<double> Residuals(this MixedModel model)
        => [.. model.FittedValues().Zip(model.Design.Observed, (f, y) => y - f)];

    /// <summary>Predicts a group at a point, which need not have been measured.</summary>
    /// <param name="model">The model.</param>
    /// <param name="point">A value for every term of the design.</param>
    /// <param name="group">One of the groups; null for a group not seen before, drawn from the same population.</param>
    /// <exception cref="ArgumentException">The group is not in the data, or the point lacks a value.</exception>
    public static Prediction Predict(this MixedModel model, ModelPoint point, string? group)
    {
        ArgumentNullException.ThrowIfNull(model);
        var state = model.State;
        var (x, z) = (model.Design.FixedRow(point), model.Design.RandomRow(point));
        var (white, value) = (state.White(x), x.Zip(model.Coefficients, (a, b) => a * b).Sum());
        state.Random.ToRow(z);
        var conditional = state.Map.Covariance(state.Eta);
        if (group is not null && state.Q > 0)
        {
            var number = state.GroupNames.ToList().IndexOf(group);
            if (number < 0)
                throw new ArgumentException($"'{group}' is not among the {model.Groups} {model.Design.GroupName}s; use null for one not seen before.", nameof(group));
            (var effects, var byFixed, conditional) = new GroupPredictor(state).Of(number);
            for (var k = 0; k < state.Q; k++)
            {
                value += state.Scale * z[k] * effects[k];
                for (var j = 0; j < state.P; j++) white[j] -= z[k] * byFixed[(k * state.P) + j];
            }
        }

        var variance = ContrastCalculator.Dot(white, white) + ContrastCalculator.Form(conditional, z);
        var unit = state.Scale * Math.Sqrt(state.Variance);
        return new(value, unit * Math.Sqrt(variance), unit * Math.Sqrt(variance + 1));
    }
}

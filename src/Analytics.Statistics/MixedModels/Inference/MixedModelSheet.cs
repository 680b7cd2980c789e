using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels.Inference;

/// <summary>A model laid out for print.</summary>
internal static class MixedModelSheet
{
    public static ResultSheet Of(MixedModel model)
    {
        var names = model.Design.RandomNames;
        var lines = model.FixedEffects.Select(f => f.Line).ToList();
        lines.AddRange(model.Variances.Select(v => new ResultLine(
            v.Name == VarianceIntervals.Residual ? "SD residual" : $"SD {v.Name} between {model.Design.GroupName}s", v.StandardDeviation)
        {
            Interval = v.Interval, Note = v.Interval is null ? "on the boundary" : string.Empty,
        }));
        if (model.Design.IsCorrelated)
        {
            for (var i = 0; i < names.Count; i++)
                for (var j = 0; j < i; j++) lines.Add(new($"correlation {names[j]}, {names[i]}", model.RandomCorrelation(j, i)));
        }

        lines.Add(new("−2 log-likelihood", model.MinusTwoLogLikelihood) { Note = FormattableString.Invariant($"AIC {model.Aic:0.00}, BIC {model.Bic:0.00}") });
        return new($"Mixed model of {model.Design.ResponseName}", Method(model), lines)
        {
            Basis = $"{model.Rows} rows of {model.Groups} {model.Design.GroupName}s",
            Remarks = model.Boundary,
        };
    }

    private static string Method(MixedModel model)
        => $"linear mixed model by {(model.State.Reml ? "restricted maximum likelihood" : "maximum likelihood")}, degrees of freedom by Satterthwaite, "
            + "intervals of SDs approximate (normal on the logarithm) [bates2015; kuznetsova2017]";
}

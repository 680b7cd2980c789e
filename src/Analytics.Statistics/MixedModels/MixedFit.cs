using Analytics.Statistics.Results;

namespace Analytics.Statistics.MixedModels;

/// <summary>What came of fitting a linear mixed model: the model, or in words why there is none.</summary>
public sealed record MixedFit : Result
{
    /// <summary>How it ended.</summary>
    public required MixedEnding Ending { get; init; }

    /// <summary>The same in words, with names and numbers.</summary>
    public required string Explanation { get; init; }

    /// <summary>The fitted model; null unless the ending is <see cref="MixedEnding.Converged"/> or <see cref="MixedEnding.OnBoundary"/>.</summary>
    public MixedModel? Model { get; init; }

    /// <summary>Rows given.</summary>
    public required int Rows { get; init; }

    /// <summary>Groups given.</summary>
    public required int Groups { get; init; }

    /// <summary>Fits by maximum likelihood, restricted or full. Too little data is an ending, not an exception.</summary>
    /// <param name="design">Response, groups, fixed and random effects.</param>
    /// <param name="criterion">Which likelihood.</param>
    public static MixedFit Of(ModelDesign design, LikelihoodCriterion criterion = LikelihoodCriterion.Reml)
    {
        ArgumentNullException.ThrowIfNull(design);
        return Criterion.MixedSolver.Fit(design, criterion == LikelihoodCriterion.Reml);
    }

    /// <summary>The model, for callers that cannot go on without one.</summary>
    /// <exception cref="InvalidOperationException">There is none; the message is the explanation.</exception>
    public MixedModel Require() => Model ?? throw new InvalidOperationException(Explanation);

    /// <inheritdoc/>
    public override ResultSheet Sheet() => Model?.Sheet() ?? new ResultSheet(
        "Mixed model: no result", "linear mixed model", [new ResultLine("ending", null) { Note = Explanation }])
    {
        Basis = $"{Rows} rows of {Groups} groups",
    };
}

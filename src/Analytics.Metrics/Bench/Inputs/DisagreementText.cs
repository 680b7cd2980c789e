namespace Analytics.Metrics.Bench.Inputs;

/// <summary>Says what a difference between observed and carried error means.</summary>
internal static class DisagreementText
{
    // Within a fifth: what taking the errors together explains (our choice).
    private const double Near = 1.25;

    public static string Of(PropagatedError error)
    {
        if (!error.IsLarge) return "The error seen between days is about what its inputs' errors make: nothing else of size adds to it.";
        var (seen, alone) = (error.Observed!.Value, error.ByThemselves!.Value);
        var explained = IsExplained(error);
        if (seen < alone)
        {
            return explained
                ? "The error seen is smaller because the inputs' errors go together and cancel in the formula: taken together, as on the retest days, they make about the error seen."
                : "The error seen is smaller than its inputs' errors make. Their errors may cancel in the formula, or be those of another group: " + Sources(error);
        }

        if (explained) return "The error seen is larger because the inputs' errors go together and add up in the formula: taken together, as on the retest days, they make about the error seen.";
        return "The error seen is larger than its inputs' errors make, so something else adds to it. " + (error.TakenAsExact.Count > 0
            ? $"Not carried: {string.Join(", ", error.TakenAsExact)}. "
            : "") + "Else look at who timed, the warm-up and how players do the test from day to day; " + Sources(error);
    }

    /// <summary>Whether taking the inputs' errors together gives about the error seen.</summary>
    public static bool IsExplained(PropagatedError error) => error is { Observed: { } seen, Together: > 0 and var together } && Math.Max(seen / together, together / seen) < Near;

    private static string Sources(PropagatedError error)
    {
        var foreign = error.Inputs.Where(i => !i.IsOwn).Select(i => i.Name).ToList();
        return foreign.Count > 0 ? $"the errors of {string.Join(", ", foreign)} are not this squad's own." : "all input errors are this squad's own.";
    }
}

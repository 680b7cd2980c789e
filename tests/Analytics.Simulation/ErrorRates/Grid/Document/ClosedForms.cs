namespace Analytics.Simulation.ErrorRates.Grid.Document;

/// <summary>How far the simulation lies from the rates known by theory: a test of the simulation.</summary>
public static class ClosedForms
{
    /// <summary>Distances in standard errors, named.</summary>
    public static IReadOnlyList<(string Case, double Errors)> Distances(GridStudy study)
    {
        ArgumentNullException.ThrowIfNull(study);
        return
        [
            .. study.Intervals.Where(r => r.ClosedForm.HasValue).Select(r => ($"{r.Entry.Name}, {r.Cell}", r.Covered.ErrorsFrom(r.ClosedForm!.Value))),
            .. study.Verdicts.Where(r => r.ClosedForm.HasValue).Select(r => (
                FormattableString.Invariant($"{r.Entry.Name}, {r.Case}, changed by {r.TrueChange} TE"), Distance(r.Clear, r.ClosedForm!.Value, r.Draws))),
            .. study.Rates.Where(r => r.Case.ClosedForm.HasValue).Select(r => ($"{r.Entry.Name}, {r.Case.Label}", r.Count.ErrorsFrom(r.Case.ClosedForm!.Value))),
        ];
    }

    // A rate so near to 0 or 1 that not one draw is expected there has no normal error; a count of one draw is the least that can be told.
    private static double Distance(double rate, double closed, int draws)
        => (rate - closed) / Math.Max(Math.Sqrt(Math.Max(0, closed * (1 - closed)) / draws), 1.0 / draws);
}

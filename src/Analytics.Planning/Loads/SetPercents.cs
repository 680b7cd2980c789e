using System.Globalization;
using Analytics.Metrics.Strength;
using Analytics.Planning.Exercises;
using Analytics.Planning.Schemes;

namespace Analytics.Planning.Loads;

/// <summary>Per cent of the exercise's own 1RM, working set by working set.</summary>
/// <param name="Percent">One a set, in order; empty where neither the scheme nor the table says any.</param>
/// <param name="Notes">How they came about where that is not plain, in words.</param>
public sealed record SetPercents(IReadOnlyList<double> Percent, IReadOnlyList<string> Notes)
{
    /// <summary>The per cent a scheme asks for: as written, evenly up to the top set in a ramp; by a table where only repetitions in reserve are written.</summary>
    /// <param name="scheme">The scheme.</param>
    /// <param name="table">Table of repetitions; printed tables differ and are never mixed. Repetitions it does not print take the next lower intensity it prints.</param>
    public static SetPercents Of(SetScheme scheme, RepetitionTable table)
    {
        ArgumentNullException.ThrowIfNull(scheme);
        ArgumentNullException.ThrowIfNull(table);
        if ((scheme.MostPercent ?? scheme.LeastPercent) is not { } top) return scheme.Reserve is { } reserve ? ByTable(scheme, reserve, table) : new([], []);
        var low = scheme.Kind == SchemeKind.Ramp ? scheme.LeastPercent ?? top : top;
        // Rounded: an edge of a zone must not be missed by a rounding error.
        return new([.. Enumerable.Range(0, scheme.Sets).Select(i => scheme.Sets == 1 ? top : Math.Round(low + (top - low) * i / (scheme.Sets - 1), 9))], []);
    }

    /// <summary>The same inside the exercise's lightest and heaviest use, with a note where that changes one.</summary>
    /// <param name="exercise">An exercise with a lift as basis.</param>
    public SetPercents Within(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var (least, most) = (exercise.LeastPercent ?? 0, exercise.MostPercent ?? double.PositiveInfinity);
        List<string> notes = [.. Notes];
        if (Percent.Any(p => p > most)) notes.Add($"{LoadWords.Percent(Percent.Max())} brought down to {LoadWords.Percent(most)}, the heaviest use of this exercise");
        if (Percent.Any(p => p < least)) notes.Add($"{LoadWords.Percent(Percent.Min())} brought up to {LoadWords.Percent(least)}, the lightest use of this exercise");
        return new([.. Percent.Select(p => Math.Min(Math.Max(p, least), most))], notes);
    }

    private static SetPercents ByTable(SetScheme scheme, double reserve, RepetitionTable table)
    {
        var toFailure = scheme.Repetitions + reserve;
        var rows = table.Rows.Where(r => r.Repetitions >= toFailure).ToList();
        var name = table.Name.ToLowerInvariant();
        if (rows.Count == 0)
            return new([], [string.Create(CultureInfo.InvariantCulture, $"{toFailure:0.#} repetitions to failure are beyond the {name}, which ends at {table.Rows[^1].Repetitions:0.#}")]);
        var (printed, percent) = rows[0];
        var how = string.Create(CultureInfo.InvariantCulture, $"{scheme.Repetitions} repetitions with {reserve:0.#} left: {percent:0.#} % by the {name}");
        if (printed > toFailure) how += string.Create(CultureInfo.InvariantCulture, $", which prints {printed:0.#} and not {toFailure:0.#} to failure");
        return new([.. Enumerable.Repeat(percent, scheme.Sets)], [how]);
    }
}

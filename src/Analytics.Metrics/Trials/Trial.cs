namespace Analytics.Metrics.Trials;

/// <summary>One recorded attempt of one athlete. Trials are stored, never averages.</summary>
public abstract record Trial
{
    /// <summary>Identifier of the athlete, as in the athlete list.</summary>
    public required string AthleteId { get; init; }

    /// <summary>Day of the attempt.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Number of the attempt, from 1.</summary>
    public int Attempt { get; init; } = 1;

    /// <summary>
    /// Who took the test: initials, a number or a short word; null when not noted, and for <see cref="ContactTrial"/>, whose rows are readings of film. As written: compare with case ignored
    /// (<see cref="StringComparer.OrdinalIgnoreCase"/>). May be a person's name; a season shared without names has "tester 1", "tester 2" instead.
    /// </summary>
    public string? Tester { get; init; }

    /// <summary>Where the attempt was read; null for a trial made in code.</summary>
    public TrialSource? Source { get; init; }
}

/// <summary>Place in an input file.</summary>
/// <param name="File">Path inside the season folder, with forward slashes; sheet after '#' for a workbook.</param>
/// <param name="Line">Line (or sheet row), from 1, the head included; 0 where it is not shown.</param>
public sealed record TrialSource(string File, int Line);

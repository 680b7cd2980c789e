using System.Globalization;
using Analytics.Quantities;

namespace Analytics.Metrics.Strength;

/// <summary>A printed table of repetitions to failure against percent of 1RM. What is not printed is not filled in.</summary>
public sealed class RepetitionTable
{
    private readonly Dictionary<double, double> _percent;

    internal RepetitionTable(string name, string? sourceKey, string evidence, params (double Repetitions, double Percent)[] rows)
    {
        Name = name;
        SourceKey = sourceKey;
        Evidence = evidence;
        Rows = rows;
        _percent = rows.ToDictionary(r => r.Repetitions, r => r.Percent);
    }

    /// <summary>Name for lists.</summary>
    public string Name { get; }

    /// <summary>Key into docs/references.md; null for common practice without a source.</summary>
    public string? SourceKey { get; }

    /// <summary>How well the table is documented.</summary>
    public string Evidence { get; }

    /// <summary>The printed rows, by rising repetitions: repetitions to failure (reserve counted in), percent of 1RM.</summary>
    public IReadOnlyList<(double Repetitions, double Percent)> Rows { get; }

    /// <summary>Percent of 1RM at these repetitions; null when the table does not print them.</summary>
    /// <param name="repetitions">Repetitions to failure, reserve counted in.</param>
    public double? PercentAt(double repetitions) => _percent.TryGetValue(repetitions, out var percent) ? percent : null;

    /// <summary>1RM by this table.</summary>
    /// <param name="load">Load lifted.</param>
    /// <param name="repetitions">Repetitions to failure, reserve counted in; one of <see cref="Rows"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The table does not print these repetitions; the message lists those it does.</exception>
    public Mass Estimate(Mass load, double repetitions) => PercentAt(repetitions) is { } percent
        ? load * (100 / percent)
        : throw new ArgumentOutOfRangeException(nameof(repetitions), repetitions, string.Create(CultureInfo.InvariantCulture,
            $"{Name} does not print {repetitions} repetitions and is not interpolated; it prints {string.Join(", ", Rows.Select(r => r.Repetitions.ToString(CultureInfo.InvariantCulture)))}."));
}

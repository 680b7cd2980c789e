namespace Analytics.Planning.Exercises;

/// <summary>The exercises a week is made of, by identifier, in file order.</summary>
public sealed class ExerciseCatalogue
{
    private readonly Dictionary<string, Exercise> _byId;

    /// <summary>A catalogue.</summary>
    /// <param name="exercises">Exercises with different identifiers.</param>
    /// <exception cref="ArgumentException">Two have the same identifier.</exception>
    public ExerciseCatalogue(IEnumerable<Exercise> exercises)
    {
        All = [.. exercises];
        _byId = new(StringComparer.Ordinal);
        foreach (var exercise in All)
            if (!_byId.TryAdd(exercise.Id, exercise)) throw new ArgumentException($"Two exercises are called '{exercise.Id}'.", nameof(exercises));
    }

    /// <summary>All exercises, in file order.</summary>
    public IReadOnlyList<Exercise> All { get; }

    /// <summary>The exercise of an identifier; null when there is none.</summary>
    /// <param name="id">Identifier.</param>
    public Exercise? Find(string id) => _byId.GetValueOrDefault(id);
}

namespace Analytics.Planning.Exercises;

/// <summary>What the load of an exercise is a share of.</summary>
public enum LoadBasisKind
{
    /// <summary>No load of its own.</summary>
    None,

    /// <summary>The 1RM of a lift.</summary>
    Lift,

    /// <summary>Body mass.</summary>
    BodyMass,

    /// <summary>A height: hurdle, box.</summary>
    Height,
}

/// <summary>What the load of an exercise is a share of, and which.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Lift">Identifier of the lift as in <c>lifts.csv</c>; null unless the kind is <see cref="LoadBasisKind.Lift"/>.</param>
public sealed record LoadBasis(LoadBasisKind Kind, string? Lift = null)
{
    /// <summary>No load.</summary>
    public static LoadBasis None { get; } = new(LoadBasisKind.None);

    /// <summary>Per cent of body mass.</summary>
    public static LoadBasis BodyMass { get; } = new(LoadBasisKind.BodyMass);

    /// <summary>A height in centimetres.</summary>
    public static LoadBasis Height { get; } = new(LoadBasisKind.Height);

    /// <summary>Per cent of the 1RM of a lift.</summary>
    /// <param name="lift">Identifier of the lift.</param>
    public static LoadBasis Of(string lift) => new(LoadBasisKind.Lift, lift);
}

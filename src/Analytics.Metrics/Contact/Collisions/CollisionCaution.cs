namespace Analytics.Metrics.Contact;

/// <summary>
/// What must be said with every figure about a collision; no such figure can be made without it. Sources: [nata2022], [viano2005], [usman2011]; the wording of guidelines is from memory.
/// </summary>
public sealed record CollisionCaution
{
    private CollisionCaution(IReadOnlyList<string> points) => Points = points;

    /// <summary>The cautions, word for word the same everywhere.</summary>
    public static CollisionCaution Standard { get; } = new(
    [
        "Caution: head up, eyes up, contact with the shoulder, head out of the line of contact. Head-first contact causes grave injuries of head and neck, to the one who strikes too.",
        "Each player is taken as one rigid mass; real forces may be twice or half of these figures, or further off.",
        "These figures are no measure of the risk of injury and no licence to hit harder; they rank nobody.",
        "Suspected concussion: out at once and to medical staff, no return the same day.",
        "Local rules and licensed staff come first.",
    ]);

    /// <summary>One sentence or two each.</summary>
    public IReadOnlyList<string> Points { get; }

    /// <summary>All of them.</summary>
    public override string ToString() => string.Join(" ", Points);
}

namespace Analytics.Metrics.Sketching;

/// <summary>What kind of thing went wrong in a formula.</summary>
public enum TroubleKind
{
    /// <summary>The result is of another dimension than the sketch's unit, or values of two dimensions were added.</summary>
    Unit,

    /// <summary>Something the formula needs is not there: a body mass never weighed, a list without trials.</summary>
    Missing,

    /// <summary>The result is infinite or not a number: a division by 0, a root of a negative number.</summary>
    NotFinite,

    /// <summary>The formula took longer than allowed.</summary>
    Slow,

    /// <summary>The formula failed in another way.</summary>
    Failed,
}

/// <summary>One athlete's day for which a sketch gave no value because something went wrong.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="AthleteId">Identifier of the athlete.</param>
/// <param name="Date">The day.</param>
/// <param name="Message">What happened and what to do, without the athlete: begins with a small letter, ends with a full stop.</param>
public sealed record SketchTrouble(TroubleKind Kind, string AthleteId, DateOnly Date, string Message);

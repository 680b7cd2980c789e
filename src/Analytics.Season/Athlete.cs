using Analytics.Quantities;

namespace Analytics.Season;

/// <summary>A member of the squad.</summary>
public sealed record Athlete
{
    /// <summary>Identifier, unique in the season.</summary>
    public required string Id { get; init; }

    /// <summary>Name as it should appear in reports. Untrusted text: always escape.</summary>
    public required string Name { get; init; }

    /// <summary>Playing position, for example <c>LB</c>.</summary>
    public required string Position { get; init; }

    /// <summary>Position group used for comparison, for example <c>Linebackers</c>.</summary>
    public required string Group { get; init; }

    /// <summary>Stature, if given.</summary>
    public Length? Stature { get; init; }

    /// <summary>Year of birth, if given.</summary>
    public int? BirthYear { get; init; }

    /// <summary>Years of structured strength training before the season, if given.</summary>
    public double? TrainingYears { get; init; }

    /// <summary>Whether he stands in the athlete list of the latest season; false for one who is known from an earlier season only.</summary>
    public bool InLatestSeason { get; init; } = true;

    /// <summary>Spells in which the athlete was not fully available.</summary>
    public IReadOnlyList<Absence> Absences { get; init; } = [];
}

/// <summary>A spell of restricted availability.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Last day; null while it lasts.</param>
/// <param name="Status">As written: injured, absent, limited, ill.</param>
public sealed record Absence(DateOnly From, DateOnly? To, string Status)
{
    /// <summary>Whether a day lies in it; without an end it lasts.</summary>
    public bool Covers(DateOnly day) => From <= day && (To is null || day <= To);
}

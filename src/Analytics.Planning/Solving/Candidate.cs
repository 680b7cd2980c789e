using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Quantities;

namespace Analytics.Planning.Solving;

/// <summary>An exercise with a scheme that fits it, and what it costs.</summary>
internal sealed record Candidate(Exercise Exercise, SetScheme Scheme, Exercise? Partner)
{
    /// <summary>Seconds it takes.</summary>
    public int Seconds { get; } = (int)Math.Ceiling(ExerciseTime.Of(Exercise, Scheme, Partner).Seconds);

    /// <summary>Ground contacts.</summary>
    public int Contacts { get; } = DoseCount.Contacts(Exercise, Scheme, Partner);

    /// <summary>Parts of the guide by zone.</summary>
    public int ZoneParts { get; } = DoseCount.ZoneParts(Exercise, Scheme);

    /// <summary>Part of the session.</summary>
    public int Part => Exercise.Quality.PartOfSession();

    /// <summary>Whether a landing of high impact comes in it.</summary>
    public bool IsHighImpact => Exercise.Impact == Impact.High || Partner?.Impact == Impact.High;

    /// <summary>Stations of exercise and partner.</summary>
    public IEnumerable<string> Stations => Partner is null ? Exercise.Stations : Exercise.Stations.Union(Partner.Stations);

    /// <summary>Hard sets.</summary>
    public int HardSets(PlanRules rules) => DoseCount.HardSets(Exercise, Scheme, rules.Value(RuleIds.HeavyPercent));

    /// <summary>Whether a working set is heavy.</summary>
    public bool IsHeavy(PlanRules rules) => DoseCount.IsHeavy(Exercise, Scheme, rules.Value(RuleIds.HeavyPercent));

    /// <summary>Whether it is heavy and the legs carry it.</summary>
    public bool IsHeavyLower(PlanRules rules) => Exercise.Pattern.IsLowerBody() && IsHeavy(rules);

    /// <summary>As an item of a plan.</summary>
    public PlannedItem Item(bool isKept) => new(Exercise, Scheme, Partner, Duration.FromSeconds(Seconds), isKept);

    /// <summary>The exercise, and the partner of a pair.</summary>
    public IEnumerable<Exercise> Exercises => Partner is null ? [Exercise] : [Exercise, Partner];
}

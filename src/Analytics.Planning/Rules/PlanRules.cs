namespace Analytics.Planning.Rules;

/// <summary>The rules of planning as they stand for a season.</summary>
public sealed class PlanRules
{
    private readonly Dictionary<string, PlanRule> _byId;

    private PlanRules(IEnumerable<PlanRule> rules)
    {
        All = [.. rules];
        _byId = All.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>The rules that come with the library.</summary>
    public static PlanRules Standard { get; } = new(StandardRules.All);

    /// <summary>All rules, in reading order.</summary>
    public IReadOnlyList<PlanRule> All { get; }

    /// <summary>The standard rules with some of them replaced.</summary>
    /// <param name="changed">Rules with identifiers of <see cref="RuleIds"/>.</param>
    /// <exception cref="ArgumentException">No such rule.</exception>
    public static PlanRules With(IEnumerable<PlanRule> changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        var given = changed.ToDictionary(r => r.Id, StringComparer.Ordinal);
        if (given.Keys.FirstOrDefault(k => !Standard._byId.ContainsKey(k)) is { } unknown)
            throw new ArgumentException($"There is no rule '{unknown}'. Known: {string.Join(", ", Standard._byId.Keys)}.", nameof(changed));
        return new(Standard.All.Select(r => given.GetValueOrDefault(r.Id, r)));
    }

    /// <summary>The rule of an identifier.</summary>
    /// <param name="id">Identifier of <see cref="RuleIds"/>.</param>
    public PlanRule this[string id] => _byId[id];

    /// <summary>Figure of a rule that has one.</summary>
    /// <param name="id">Identifier of <see cref="RuleIds"/>.</param>
    public double Value(string id) => this[id].Value!.Value;

    /// <summary>Minutes of a rule that counts time; 0 where it is off.</summary>
    /// <param name="id">Identifier of <see cref="RuleIds"/>.</param>
    public double Minutes(string id) => IsOn(id) ? Value(id) : 0;

    /// <summary>Whether no plan may break it.</summary>
    /// <param name="id">Identifier of <see cref="RuleIds"/>.</param>
    public bool Refuses(string id) => this[id].Handling == RuleHandling.Refuse;

    /// <summary>Whether it is looked at.</summary>
    /// <param name="id">Identifier of <see cref="RuleIds"/>.</param>
    public bool IsOn(string id) => this[id].Handling != RuleHandling.Off;
}

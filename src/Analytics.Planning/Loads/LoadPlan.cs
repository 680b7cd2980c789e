using Analytics.Metrics.Strength;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rooms;
using Analytics.Planning.Rules;
using Analytics.Quantities;

namespace Analytics.Planning.Loads;

/// <summary>What a player puts on for a planned exercise. Every load is rounded down to what can really be put on.</summary>
public static class LoadPlan
{
    /// <summary>The prescription, with the textbook's table [baechle2008] for schemes that name only repetitions in reserve.</summary>
    /// <param name="player">The player.</param>
    /// <param name="item">Exercise and scheme.</param>
    /// <param name="stock">Bars, plates and other weights.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="today">Day the loads are for.</param>
    public static Prescription Of(PlanPlayer player, PlannedItem item, WeightStock stock, PlanRules rules, DateOnly today)
        => Of(player, item, stock, rules, today, RepetitionTables.Textbook);

    /// <summary>The prescription by a table of your choice.</summary>
    /// <param name="player">The player.</param>
    /// <param name="item">Exercise and scheme.</param>
    /// <param name="stock">Bars, plates and other weights.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="today">Day the loads are for.</param>
    /// <param name="table">Table for schemes that name only repetitions in reserve; printed tables differ.</param>
    public static Prescription Of(PlanPlayer player, PlannedItem item, WeightStock stock, PlanRules rules, DateOnly today, RepetitionTable table)
    {
        ArgumentNullException.ThrowIfNull(player);
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(rules);
        var own = item.Exercise.Basis.Kind switch
        {
            LoadBasisKind.Lift => LiftLoads.Of(player, item, stock, rules, today, table),
            LoadBasisKind.BodyMass => BodyMassLoads.Of(player, item.Exercise, item.Scheme.Sets, stock),
            LoadBasisKind.Height => new Prescription { Height = HeightFor(player, item.Exercise, rules), Instead = HeightFor(player, item.Exercise, rules) is null ? NoHeight : null },
            _ => new Prescription(),
        };
        return item.Partner is { } partner ? WithPartner(own, player, partner, stock, rules) : own;
    }

    private const string NoHeight = "a height by eye: none is listed";

    /// <summary>Middle of the range; its lowest for beginners and heavy players (our choice, no source). Null when the exercise has no height.</summary>
    private static Length? HeightFor(PlanPlayer player, Exercise exercise, PlanRules rules)
    {
        if ((exercise.LeastHeight ?? exercise.MostHeight) is not { } low) return null;
        var careful = ContactLimit.IsBeginner(player) || ContactLimit.IsHeavyPlayer(player, rules);
        return careful ? low : (low + (exercise.MostHeight ?? low)) / 2;
    }

    // The reactive movement of a contrast pair has one column less on a sheet: its height, or its weight as a note.
    private static Prescription WithPartner(Prescription own, PlanPlayer player, Exercise partner, WeightStock stock, PlanRules rules)
    {
        if (partner.Basis.Kind == LoadBasisKind.Height) return own with { Height = HeightFor(player, partner, rules) };
        if (partner.Basis.Kind != LoadBasisKind.BodyMass) return own;
        var second = BodyMassLoads.Of(player, partner, 1, stock);
        var text = second.Working.Count > 0 ? LoadWords.Of(second.Working[0], stock.Unit) : second.Instead;
        return text is null ? own : own with { Notes = [.. own.Notes, $"{partner.Name}: {text}"] };
    }
}

using Analytics.Planning.Exercises;
using Analytics.Planning.Weeks;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>A candidate and whether it is chosen.</summary>
internal sealed record Choice(Candidate Candidate, BoolVar Chosen);

/// <summary>One unit in one session: what can be chosen for it.</summary>
internal sealed class UnitDay(TrainingUnit unit, int unitIndex, SessionSlot slot, DayKind kind)
{
    public TrainingUnit Unit => unit;

    public int UnitIndex => unitIndex;

    public SessionSlot Slot => slot;

    public DayKind Kind => kind;

    /// <summary>Choices of the shared part.</summary>
    public List<Choice> Shared { get; } = [];

    /// <summary>Choices of the own work, by quality.</summary>
    public SortedDictionary<TrainedQuality, List<Choice>> Own { get; } = [];

    /// <summary>Whether there is own work at all; null where the kind has none.</summary>
    public BoolVar? HasOwn { get; set; }

    /// <summary>Whether the quality is the default of the unit.</summary>
    public SortedDictionary<TrainedQuality, BoolVar> Default { get; } = [];

    /// <summary>Whether anybody of the unit does own work of the quality.</summary>
    public SortedDictionary<TrainedQuality, BoolVar> Taken { get; } = [];

    /// <summary>Own work of players who need something of it, by player; all others do the default.</summary>
    public SortedDictionary<string, SortedDictionary<TrainedQuality, BoolVar>> OwnOf { get; } = new(StringComparer.Ordinal);

    /// <summary>Every choice, shared and own.</summary>
    public IEnumerable<Choice> All => Shared.Concat(Own.Values.SelectMany(o => o));

    public override string ToString() => $"{unit.Label} | {PlaceTexts.Session(slot)}";
}

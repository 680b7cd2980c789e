using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Loads;
using Analytics.Planning.People;
using Analytics.Planning.Plans;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Quantities;

namespace Analytics.Planning.Tests.Dose;

/// <summary>A player's week against its limits; every amount by hand.</summary>
public sealed class DoseSheetTests
{
    [Fact]
    public void Ramp_RepetitionsFallInTheirZones()
    {
        // 60, 65, 70, 75, 80, 85, 90 %, 2 each: 4 below 70, 4 from 70, 4 from 80, 2 from 90; the edges go up.
        var zones = Lines(Made.Item(Made.Clean, Made.Ramp(7, 2, 60, 90))).Where(l => l.RuleId == RuleIds.ZoneRepetitions).ToList();
        Assert.Equal([4.0, 4, 4, 2], zones.Select(z => z.Amount!.Value));
        Assert.Equal([30.0, 24, 20, 10], zones.Select(z => z.Limit!.Value));
        Assert.All(zones, z => Assert.True(z.IsWithin));
        Assert.All(zones, z => Assert.Equal("hristov2005", z.Source));
    }

    [Theory]
    [InlineData(8, 3, 75, 24, true)]
    [InlineData(5, 5, 75, 25, false)] // 24 at most
    [InlineData(10, 2, 80, 20, true)]
    [InlineData(7, 3, 80, 21, false)]
    [InlineData(10, 1, 90, 10, true)]
    [InlineData(11, 1, 90, 11, false)]
    public void Zone_MostCounts(int sets, int repetitions, double percent, double amount, bool within)
    {
        var zone = Assert.Single(Lines(Made.Item(Made.Clean, Made.Sets(sets, repetitions, percent))), l => l.RuleId == RuleIds.ZoneRepetitions);
        Assert.Equal((amount, within), (zone.Amount!.Value, zone.IsWithin!.Value));
    }

    [Fact]
    public void OneMovementTwice_IsSummed_TwoMovementsShareTheGuide()
    {
        var item = Made.Item(Made.Clean, Made.Sets(5, 3, 75));
        var twice = Lines(item, item).Single(l => l.RuleId == RuleIds.ZoneRepetitions);
        Assert.Equal(30, twice.Amount);
        Assert.False(twice.IsWithin);
        var other = Made.Item(Made.Lift("hang_clean", MovementPattern.Weightlifting, TrainedQuality.ExplosivePower), Made.Sets(5, 3, 75));
        // 15 of at most 24, twice: 5/8 and 5/8 of the guide.
        var lines = Lines(item, other).Where(l => l.RuleId == RuleIds.ZoneRepetitions).ToList();
        Assert.Equal([(15.0, true), (15, true), (125, false)], lines.Select(l => (l.Amount!.Value, l.IsWithin!.Value)));
        Assert.Equal(("cleans, snatches and pulls", "%"), (lines[2].Subject, lines[2].Unit));
    }

    [Fact]
    public void SlowLifts_HaveNoZones() => Assert.DoesNotContain(Lines(Made.Item(Made.Squat, Made.Sets(5, 5, 75))), l => l.RuleId == RuleIds.ZoneRepetitions);

    [Fact]
    public void MovementWithoutPerCent_SaysThatNoZoneIsKnown()
    {
        var line = Assert.Single(Lines(Made.Item(Made.Clean, Made.Sets(5, 3))), l => l.What == "repetitions");
        Assert.Equal(15, line.Amount);
        Assert.Null(line.IsWithin);
        Assert.Contains("no zone", line.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void LongSets_AreRemarkedUpon()
        => Assert.Equal("sets of 5, the guide has 2 to 4", Lines(Made.Item(Made.Clean, Made.Sets(3, 5, 80))).Single(l => l.RuleId == RuleIds.ZoneRepetitions).Note);

    [Fact]
    public void Index_IsSummed_AndNotDefinedAtTheMaximum()
    {
        Assert.Equal(0.6, Lines(Made.Item(Made.Clean, Made.Sets(3, 3, 85))).Single(l => l.What == "intensity index").Amount!.Value, 12);
        var single = Lines(Made.Item(Made.Clean, Made.Sets(1, 1, 100))).Single(l => l.What == "intensity index");
        Assert.Null(single.Amount);
        Assert.Equal("not defined at 100 % and more", single.Note);
    }

    [Theory]
    [InlineData(14, 140, true)] // 14 × 10, much experience
    [InlineData(15, 150, false)]
    public void Contacts_AgainstTheLimitOfThePlayer(int sets, double amount, bool within)
    {
        var line = Lines(Made.Item(Made.Jump, Made.Sets(sets, 10))).Single(l => l.RuleId == RuleIds.JumpContacts);
        Assert.Equal((amount, 140.0, within), (line.Amount!.Value, line.Limit!.Value, line.IsWithin!.Value));
    }

    // 10 min of warm-up, 2 min to change and 4 × 24 s with three rests of 120 s, 7.6 min.
    [Theory]
    [InlineData(20, true)]
    [InlineData(19, false)]
    public void Minutes_AgainstTheSlot(int minutes, bool within)
    {
        var item = Made.Item(Made.Squat with { Implement = "dumbbell" }, Made.Sets(4, 8, 70)) with { Time = Duration.FromSeconds(1) };
        var line = DoseSheet.Of(Made.Player(), [new(Slot(8) with { Minutes = minutes }, [item])], PlanRules.Standard).Lines.Single(l => l.RuleId == RuleIds.SessionMinutes);
        Assert.Equal(19.6, line.Amount!.Value, 9);
        Assert.Equal(within, line.IsWithin);
    }

    [Fact]
    public void HardSets_OfThePattern_AreSummedOverTheWeek()
    {
        // 4 at 85 % and one of a ramp to 85 % on each of three days: 15 squats of 12.
        PlannedItem[] items = [Made.Item(Made.Squat, Made.Sets(4, 3, 85)), Made.Item(Made.Squat, Made.Ramp(5, 3, 60, 85)), Made.Item(Made.Clean, Made.Sets(5, 3, 75))];
        var sheet = DoseSheet.Of(Made.Player(), [new(Slot(8), items), new(Slot(10), items), new(Slot(12), items)], PlanRules.Standard);
        var line = Assert.Single(sheet.Lines, l => l.RuleId == RuleIds.HardSets);
        Assert.Equal(("squat", 15.0, 12.0), (line.Subject, line.Amount!.Value, line.Limit!.Value));
        Assert.Equal([line], sheet.NotKept);
    }

    // 5 × 5 × 140 kg = 3500 kg (own arithmetic, docs/methods/load.md).
    [Fact]
    public void VolumeLoad_WhereLoadsAreKnown()
    {
        var player = Made.Player(Made.Tested("back_squat", 187));
        Prescription Loads(PlannedItem item) => LoadPlan.Of(player, item, Made.Kilograms, PlanRules.Standard, Made.Today);
        // 75 % of 187 = 140.25.
        var items = new[] { Made.Item(Made.Squat, Made.Sets(5, 5, 75)), Made.Item(Made.Clean, Made.Sets(5, 3, 75)) };
        var line = Assert.Single(DoseSheet.Of(player, [new(Slot(8), items)], PlanRules.Standard, Loads).Lines, l => l.What == "volume-load");
        Assert.Equal(("back squat", 3500.0, "kg"), (line.Subject, line.Amount!.Value, line.Unit));
    }

    [Fact]
    public void VolumeLoad_CountsEachSetAndBothSides()
    {
        var item = Made.Item(Made.Squat with { IsUnilateral = true }, Made.Ramp(2, 3, 50, 75));
        Prescription loads = new() { Working = [Mass.FromKilograms(50), Mass.FromKilograms(75)] };
        // 3 × 2 × (50 + 75).
        Assert.Equal(750, DoseSheet.Of(Made.Player(), [new(Slot(8), [item])], PlanRules.Standard, _ => loads).Lines.Single(l => l.What == "volume-load").Amount);
    }

    [Fact]
    public void ShortRestAndLongSet_AreRemarks_NotBrokenRules()
    {
        var sheet = DoseSheet.Of(Made.Player(),
            [new(Slot(8), [Made.Item(Made.Sprint, Made.Sets(6, 1) with { Rest = Duration.FromSeconds(30) }), Made.Item(Made.Squat, EachMinute(25))])], PlanRules.Standard);
        Assert.Empty(sheet.NotKept);
        Assert.Equal(["rest", "time of a set"], sheet.Remarks.Select(r => r.What));
        Assert.Equal("the guide has 72 to 120 s", sheet.Remarks.First().Note);
        Assert.Equal("a set is longer than its interval: no rest is left", sheet.Remarks.Last().Note);
    }

    [Fact]
    public void RuleOff_HasAnAmountAndNoLimit()
    {
        var off = PlanRules.With(new[] { RuleIds.HardSets, RuleIds.JumpContacts, RuleIds.ZoneRepetitions, RuleIds.SessionMinutes }.Select(id => PlanRules.Standard[id] with { Handling = RuleHandling.Off }));
        PlannedItem[] items = [Made.Item(Made.Squat, Made.Sets(40, 3, 85)), Made.Item(Made.Jump, Made.Sets(40, 10)), Made.Item(Made.Clean, Made.Sets(40, 3, 85))];
        var sheet = DoseSheet.Of(Made.Player(), [new(Slot(8), items)], off);
        Assert.All(sheet.Lines.Where(l => l.RuleId is not null), l => Assert.Null(l.IsWithin));
        Assert.Equal(5, sheet.Lines.Count(l => l.RuleId is not null)); // minutes, contacts, one zone, squats, cleans
        Assert.Equal(5, DoseSheet.Of(Made.Player(), [new(Slot(8), items)], PlanRules.Standard).NotKept.Count());
    }

    [Fact]
    public void Plan_GivesEachPlayerHisPart()
    {
        var shared = Made.Item(Made.Jump, Made.Sets(4, 5));
        var own = new OwnWork(TrainedQuality.ReactiveAbility, Made.Item(Made.Jump, Made.Sets(2, 5)), ["P001"], []);
        UnitSession unit = new() { Slot = Slot(8), Kind = new("reactive", "Reactive", [], ""), Group = "line", Players = ["P001", "P002"], Shared = [shared], Own = [own], Minutes = 40 };
        WeekPlan plan = new() { Monday = new(2026, 6, 8), Sessions = [unit], Quality = new(0, 0, false), Needs = [], LeftOut = [], Flags = [], Changes = [] };
        double? Contacts(string id) => DoseSheet.Of(Made.Player() with { Id = id }, plan, PlanRules.Standard).Lines.SingleOrDefault(l => l.RuleId == RuleIds.JumpContacts)?.Amount;
        Assert.Equal(30, Contacts("P001"));
        Assert.Equal(20, Contacts("P002"));
        Assert.Null(Contacts("P003"));
        Assert.Empty(DoseSheet.Of(Made.Player() with { Id = "P003" }, plan, PlanRules.Standard).Lines);
        Assert.Empty(DoseSheet.Of(Made.Player(), plan with { Sessions = [unit with { Players = [] }] }, PlanRules.Standard).Lines);
    }

    private static SetScheme EachMinute(int repetitions) => Made.Sets(2, repetitions, 60) with { Kind = SchemeKind.OnTheMinute, Interval = Duration.FromMinutes(1) };

    private static SessionSlot Slot(int day) => new() { Date = new(2026, 6, day), Kind = "max_strength", Minutes = 90 };

    private static IReadOnlyList<DoseLine> Lines(params PlannedItem[] items) => DoseSheet.Of(Made.Player(), [new(Slot(8), items)], PlanRules.Standard).Lines;
}

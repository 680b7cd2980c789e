using Analytics.Metrics.Sketching;
using Analytics.Metrics.Tests.Catalogue;
using Analytics.Metrics.Trials;
using Analytics.Quantities;

namespace Analytics.Metrics.Tests.Sketching;

/// <summary>What goes wrong in a formula is told in words, by athlete and day, and stops nobody else.</summary>
public class SketchTroubleTests
{
    private const string EmptyList = "the formula takes the first, best or mean of an empty list. Return null when there is no such trial.";

    private const string NotFinite = "the result is not a finite number: a division by 0, or a root or logarithm of a negative number. Return null where the formula makes no sense.";

    public static TheoryData<string, TroubleKind, string> Kinds { get; } = new()
    {
        { "other unit", TroubleKind.Unit, "the formula gives a value in m, which is no number of kg. Change the formula, or the sketch's unit, which is kg." },
        { "sum of units", TroubleKind.Unit, "a bare number cannot be added to a value in kg. Change the formula, or the sketch's unit, which is kg." },
        { "null", TroubleKind.Missing, "the formula uses something that is not there. Ask with ?. or return null when it is missing." },
        { "value of null", TroubleKind.Missing, "the formula takes the .Value of something that was not measured. Leave .Value out, or return null when it is missing." },
        { "max of none", TroubleKind.Missing, EmptyList },
        { "first of none", TroubleKind.Missing, EmptyList },
        { "first that is", TroubleKind.Missing, EmptyList },
        { "over zero", TroubleKind.NotFinite, NotFinite },
        { "typed over zero", TroubleKind.NotFinite, NotFinite },
        { "whole over zero", TroubleKind.NotFinite, NotFinite },
        { "root", TroubleKind.NotFinite, NotFinite },
        { "own exception", TroubleKind.Failed, "the formula failed: no idea (NotSupportedException)." },
        { "two lines", TroubleKind.Failed, "the formula failed: one two (NotSupportedException)." },
        { "below zero", TroubleKind.Failed, "the formula failed: mass must be a finite number of kg, 0 or more; got -1. (Parameter 'si') Actual value was -1 (ArgumentOutOfRangeException)." },
    };

    [Theory, MemberData(nameof(Kinds))]
    public void Trouble_OfOneAthlete_IsWordedAndTheOthersStand(string what, TroubleKind kind, string message)
    {
        var sketch = Sketches.OfDay(day => day.AthleteId == "a2" ? Wrong(what, day) : day.Of<LiftSet>().Max(s => s.Load));

        Assert.Equal([140, 150], sketch.Values(Sketches.Lifted("a1", 140), Sketches.Lifted("a2", 145), Sketches.Lifted("a3", 150)));
        Assert.Equal([new SketchTrouble(kind, "a2", Days.Date, message)], sketch.Troubles);
    }

    [Fact]
    public void Trouble_UnknownLibraryMetric_ListsTheKnownOnes()
    {
        var sketch = Sketches.OfDay(day => day.Value("back_sqat_1rm"));

        Assert.Empty(sketch.Values(Sketches.Lifted("a1", 140)));
        var trouble = Assert.Single(sketch.Troubles);
        Assert.Equal(TroubleKind.Failed, trouble.Kind);
        Assert.StartsWith("no metric 'back_sqat_1rm'; known: body_mass, ", trouble.Message, StringComparison.Ordinal);
        Assert.EndsWith(".", trouble.Message, StringComparison.Ordinal);
    }

    // The second set fails, the first and third of the same day stand.
    [Fact]
    public void Trouble_OfOneAttempt_LeavesTheOtherAttempts()
    {
        var sketch = Sketches.OfSet((set, day) => set.Load.Kilograms == 150 ? set.Load / (AnyQuantity)0 : set.Load);

        Assert.Equal([140, 160], sketch.Values(Sketches.Lifted("a1", 140, 150, 160)));
        Assert.Equal([TroubleKind.NotFinite], sketch.Troubles.Select(t => t.Kind));
    }

    // The same trouble of several attempts of one day is one; that of another day is another.
    [Fact]
    public void Troubles_AreToldOnceADayInOrderOfDayAndAthlete()
    {
        var sketch = Sketches.OfSet((_, _) => throw new NotSupportedException("no idea"));
        AthleteDay[] days = [Sketches.Lifted("b", 1, 2, 3), Sketches.Lifted("a", 1), Sketches.Lifted("b", 4) with { Date = Days.Date.AddDays(-1) }];

        Assert.Empty(sketch.Values(days));
        Assert.Empty(sketch.Values(days));
        Assert.Equal([("b", Days.Date.AddDays(-1)), ("a", Days.Date), ("b", Days.Date)], sketch.Troubles.Select(t => (t.AthleteId, t.Date)));
    }

    // Without the whole list nobody can say which scale the first value is on.
    [Fact]
    public void Trouble_WhileTrialsAreEnumerated_TakesThatDayOnly()
    {
        var sketch = Sketches.OfSet((set, _) => set.Load);

        Assert.Equal([150], sketch.Values(Days.Empty with { Trials = new BreaksAfterFirst(Days.Lift("back_squat", 140, 1)) }, Sketches.Lifted("a3", 150)));
        Assert.Equal(("the formula failed: the list broke (NotSupportedException).", "a1"), (Assert.Single(sketch.Troubles).Message, sketch.Troubles[0].AthleteId));
    }

    [Fact]
    public void NullResult_IsNoTrouble()
    {
        var sketch = Sketches.OfDay(_ => null);

        Assert.Empty(sketch.Values(Sketches.Lifted("a1", 140)));
        Assert.Empty(sketch.Troubles);
    }

    private static AnyQuantity? Wrong(string what, AthleteDay day)
    {
        var (none, zero, runs) = (day with { BodyMass = null, Stature = null }, Days.Lift("x", 0, 0), day.Of<SprintTrial>());
        return what switch
        {
            "other unit" => day.Stature,
            "sum of units" => (AnyQuantity)day.BodyMass!.Value + 1,
            "null" => ((LiftSet?)day.Of<LiftSet>().FirstOrDefault(s => s.Lift == "x"))!.Load,
            "value of null" => none.BodyMass!.Value,
            "max of none" => runs.Max(s => s.Splits[0].Time),
            "first of none" => runs.First().Splits[0].Time,
            "first that is" => day.Of<LiftSet>().First(s => s.Repetitions == 7).Load,
            "over zero" => (AnyQuantity)day.BodyMass!.Value * day.BodyMass.Value / zero.Load,
            "typed over zero" => day.BodyMass!.Value / zero.Load,
            "whole over zero" => Mass.FromKilograms(7 / zero.Repetitions),
            "root" => (-(AnyQuantity)day.BodyMass!.Value).ToPower(0.5) * ((AnyQuantity)day.BodyMass!.Value).ToPower(0.5),
            "own exception" => throw new NotSupportedException("no idea"),
            "two lines" => throw new NotSupportedException("one\n\ttwo."),
            "below zero" => Mass.FromKilograms(1) - Mass.FromKilograms(2),
            _ => throw new ArgumentOutOfRangeException(nameof(what), what, "no such case"),
        };
    }

    private sealed class BreaksAfterFirst(Trial first) : IReadOnlyList<Trial>
    {
        public int Count => 2;

        public Trial this[int index] => index == 0 ? first : throw new NotSupportedException("the list broke");

        public IEnumerator<Trial> GetEnumerator()
        {
            yield return this[0];
            yield return this[1];
        }

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}

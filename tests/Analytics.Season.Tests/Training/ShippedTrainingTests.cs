using System.Text.RegularExpressions;
using Analytics.Planning;
using Analytics.Planning.Dose;
using Analytics.Planning.Exercises;
using Analytics.Planning.Rules;
using Analytics.Planning.Schemes;
using Analytics.Planning.Weeks;
using Analytics.Season.Intake;
using Analytics.Season.Tests.Support;
using Analytics.Season.Training;

namespace Analytics.Season.Tests.Training;

/// <summary>The files that come with the kit.</summary>
public sealed class ShippedTrainingTests
{
    private static readonly TrainingSettings Kit = ShippedTraining.In("lb");

    private static SetScheme Scheme(string id) => Kit.Schemes.Single(s => s.Id == id);

    private static DayKind Kind(string id) => Kit.Kinds.Single(k => k.Id == id);

    private static IEnumerable<SetScheme> For(Exercise exercise) => Kit.Schemes.Where(s =>
        s.Qualities.Contains(exercise.Quality) && (s.Patterns.Count is 0 || s.Patterns.Contains(exercise.Pattern)) && (s.IsEachSide is not { } each || each == exercise.IsUnilateral));

    [Theory]
    [InlineData("lb")]
    [InlineData("kg")]
    public void Files_AreReadWithoutFaultOrRemark(string unit)
    {
        var intake = new SeasonIntake(null!, CancellationToken.None);

        ShippedTraining.Read(intake, unit);

        Assert.Empty(intake.Notes);
        Assert.All(intake.Files, f => Assert.Equal((f.Rows, 0), (f.Kept, f.HeldBack.Count())));
    }

    [Fact]
    public void Rules_AreTheStandardRulesAsText()
    {
        using var season = new TemporarySeason().With("training/rules.csv", ShippedTraining.Text("rules.csv"));

        Assert.Equal(PlanRules.Standard.All, season.Read().Training.Rules.All);
        Assert.All(PlanRules.Standard.All, r => Assert.True(r.Value is not { } v || v >= RuleLimits.Of(r.Id).Low && v <= RuleLimits.Of(r.Id).High, r.Id));
    }

    [Fact]
    public void Exercises_AllHaveASchemeOnSomeKindOfDay_AndEverySchemeAnExercise()
    {
        Assert.Empty(Kit.Exercises.All.Where(e => !Kit.Schemes.Any(s => s.Fits(e) && Kit.Kinds.Any(k => k.Of(e)?.Takes(s.MostPercent) == true))).Select(e => e.Id));
        Assert.Empty(Kit.Schemes.Where(s => !Kit.Exercises.All.Any(s.Fits)).Select(s => s.Id));
    }

    /// <summary>Nobody may be left without work of a quality, also where there is nothing but a floor.</summary>
    [Fact]
    public void Exercises_EveryQuality_HasFiveAndSomeThatNeedOnlyAFloor()
    {
        foreach (var quality in TrainedQualities.All)
        {
            var of = Kit.Exercises.All.Where(e => e.Quality == quality).ToList();
            Assert.True(of.Count >= 5, quality.Name());
            Assert.True(of.Count(e => e.Stations.Count is 0) >= 3, quality.Name());
        }

        Assert.Equal(MovementPatterns.All, Kit.Exercises.All.Select(e => e.Pattern).Distinct().Order());
    }

    [Fact]
    public void Exercises_EachHasASchemeWithinItsPerCent()
        => Assert.All(Kit.Exercises.All, e => Assert.True(For(e).Any(s => e.Basis.Kind != LoadBasisKind.Lift || s.LeastPercent is null || (s.LeastPercent >= e.LeastPercent && s.MostPercent <= e.MostPercent)), e.Id));

    [Fact]
    public void Exercises_StationsAndImplements_AreThere()
    {
        Assert.All(Kit.Exercises.All.SelectMany(e => e.Stations), s => Assert.True(Kit.Rooms.Single().Places(s) > 0, s));
        var noWeights = new[] { "band" };
        foreach (var unit in new[] { "lb", "kg" })
            Assert.All(Kit.Exercises.All.Select(e => e.Implement).OfType<string>().Except(noWeights).Except(["barbell"]), i => Assert.NotEmpty(ShippedTraining.In(unit).Weights.Singles[i]));
        Assert.All(Kit.Exercises.All.Where(e => e.Implement == "barbell"), e => Assert.NotEmpty(e.Stations));
    }

    /// <summary>The three lifts that are tested most give all loads, so that a squad that tests them need not test more.</summary>
    [Fact]
    public void Exercises_Lifts_RestOnThree()
        => Assert.Equal(["back_squat", "bench_press", "power_clean"], Kit.Exercises.All.Select(e => e.Basis.Lift).OfType<string>().Distinct().Order(StringComparer.Ordinal));

    /// <summary>Squat of 1.5 body masses and at most 100 kg for depth jumps: an older, careful guideline [baechle2008, from memory].</summary>
    [Fact]
    public void Exercises_DepthJump_AsksForStrengthAndALightBody()
    {
        var jump = Kit.Exercises.Find("depth_jump")!;
        Assert.Equal((1.5, 100.0, Impact.High), (jump.LeastSquatRatio, jump.MostBodyMass!.Value.Kilograms, jump.Impact));
        Assert.Contains("[baechle2008]", jump.Prerequisite, StringComparison.Ordinal);
        Assert.All(Kit.Exercises.All.Where(e => e.Impact == Impact.High), e => Assert.True(e.LeastSquatRatio >= 1.2 && e.LeastTrainingYears >= 1, e.Id));
    }

    [Fact]
    public void Exercises_WithContacts_AreJumps()
        => Assert.Equal(Kit.Exercises.All.Where(e => e.Pattern == MovementPattern.Jump), Kit.Exercises.All.Where(e => e.JumpContacts > 0));

    /// <summary>Figures common in practice, no source.</summary>
    [Theory]
    [InlineData("doubles_6_on_the_minute", SchemeKind.OnTheMinute, 6, 2, 60, null)]
    [InlineData("doubles_8_on_the_minute", SchemeKind.OnTheMinute, 8, 2, 60, null)]
    [InlineData("singles_7_on_the_minute", SchemeKind.OnTheMinute, 7, 1, 60, null)]
    [InlineData("doubles_5_building_up", SchemeKind.Ramp, 5, 2, 120, null)]
    [InlineData("five_threes_a_side", SchemeKind.Straight, 5, 3, 90, true)]
    [InlineData("five_fives_a_side", SchemeKind.Straight, 5, 5, 60, true)]
    [InlineData("strength_5x5_75", SchemeKind.Straight, 5, 5, 120, false)]
    [InlineData("strength_4x3_85", SchemeKind.Straight, 4, 3, 180, false)]
    [InlineData("strength_3x5_80", SchemeKind.Straight, 3, 5, 150, false)]
    public void Schemes_OfCommonPractice_AreThere(string id, SchemeKind kind, int sets, int repetitions, double seconds, bool? eachSide)
    {
        var scheme = Scheme(id);
        Assert.Equal((kind, sets, repetitions, eachSide), (scheme.Kind, scheme.Sets, scheme.Repetitions, scheme.IsEachSide));
        Assert.Equal(seconds, kind == SchemeKind.OnTheMinute ? scheme.Interval.Seconds : scheme.Rest.Seconds);
    }

    /// <summary>Sets and totals of weightlifting movements by zone [hristov2005]; the zones themselves are checked where they stand.</summary>
    [Fact]
    public void Schemes_OfWeightlifting_StayWithinTheZones()
    {
        var lifting = Kit.Schemes.Where(s => s.Patterns.Contains(MovementPattern.Weightlifting)).ToList();
        Assert.Equal(8, lifting.Count);
        foreach (var scheme in lifting)
        {
            foreach (var zone in new[] { ZoneGuide.At(scheme.LeastPercent!.Value), ZoneGuide.At(scheme.MostPercent!.Value) })
            {
                Assert.InRange(scheme.Repetitions, zone.LeastPerSet, zone.MostPerSet);
                Assert.InRange(scheme.TotalRepetitions, zone.Least, zone.Most);
            }
        }
    }

    /// <summary>Work of 5 to 10 s with 12 to 20 times as much rest [baechle2008, from memory]; shorter sprints rest a minute or more.</summary>
    [Fact]
    public void Schemes_OfSprints_RestLongEnough()
    {
        var sprints = Kit.Exercises.All.Where(e => e.Pattern == MovementPattern.Sprint).ToList();
        Assert.Contains(sprints, e => e.RepetitionTime.Seconds >= 5);
        foreach (var (exercise, scheme) in sprints.SelectMany(e => For(e).Select(s => (e, s))))
        {
            var work = exercise.RepetitionTime.Seconds * scheme.Repetitions;
            Assert.True(scheme.Rest.Seconds >= 60 && work <= 10, exercise.Id);
            if (work >= 5) Assert.InRange(scheme.Rest.Seconds / work, 12, 20);
        }
    }

    [Fact]
    public void Schemes_OnTheMinute_FitTheirInterval()
    {
        foreach (var (exercise, scheme) in Kit.Exercises.All.SelectMany(e => For(e).Where(s => s.Kind == SchemeKind.OnTheMinute).Select(s => (e, s))))
            Assert.True(scheme.Repetitions * exercise.RepetitionTime.Seconds * DoseCount.Sides(exercise) <= scheme.Interval.Seconds / 2, $"{exercise.Id} {scheme.Id}");
    }

    /// <summary>One exercise is no more than a session of a careful beginner [baechle2008]: 80 contacts.</summary>
    [Fact]
    public void Schemes_OfJumps_StayBelowASessionOfBeginners()
        => Assert.All(Kit.Exercises.All.Where(e => e.JumpContacts > 0).SelectMany(e => For(e).Select(s => (e, s))), p => Assert.InRange(DoseCount.Contacts(p.e, p.s), 1, 79));

    [Fact]
    public void Kinds_OfEveryWeek_AskForThreeToFiveAndFitTheirMinutes()
    {
        foreach (var day in Kit.Shapes.SelectMany(s => s.Days))
        {
            var kind = Kind(day.Kind);
            Assert.InRange(kind.Demands.Sum(d => d.Least), 3, 5);
            // The quickest exercise of each demand, warm-up and changes, one choice of own work with them.
            var quickest = kind.Demands.ToDictionary(d => d, d => Kit.Exercises.All.Where(e => d.Concerns(e) && e.Stations.Count < 2).SelectMany(e => For(e).Where(s => d.Takes(s.MostPercent)).Select(s => ExerciseTime.Of(e, s).Seconds)).Order().Take(d.Least + 1).ToList());
            var shared = kind.Demands.Sum(d => quickest[d].Take(d.Least).Sum());
            var own = kind.Demands.Where(d => d.IsOwnWork).Min(d => quickest[d][^1]);
            var minutes = 10 + (shared + own) / 60 + 2 * (kind.Demands.Sum(d => d.Least) + 1);
            Assert.True(minutes <= day.Minutes, $"{day.Kind}: {minutes} of {day.Minutes} minutes");
        }
    }

    [Fact]
    public void Weeks_OfEveryPhase_GiveEveryQualityADayOfOwnWork()
        => Assert.All(Kit.Shapes, s => Assert.Equal(TrainedQualities.All, s.Days.SelectMany(d => Kind(d.Kind).OwnWork).Distinct().Order()));

    [Fact]
    public void Weeks_HaveTheirSessions()
    {
        Assert.Equal([(SeasonPhase.OffSeason, 4), (SeasonPhase.PreSeason, 3), (SeasonPhase.InSeason, 4)], Kit.Shapes.Select(s => (s.Phase, s.Days.Count)));
        Assert.All(Kit.Shapes.SelectMany(s => s.Days), d => Assert.InRange(d.Minutes, 45, 75));
    }

    /// <summary>Within 48 h of a game nothing reaches the share from which a set is heavy (80 %): neither two days before it, nor two after.</summary>
    [Fact]
    public void Weeks_InSeason_HaveNothingHeavyNearTheGame()
    {
        var days = Kit.Shapes.Single(s => s.Phase == SeasonPhase.InSeason).Days;
        Assert.All(days, d => Assert.NotNull(d.DaysToGame));
        foreach (var day in days.Where(d => d.DaysToGame <= 2 || 7 - d.DaysToGame <= 2))
            Assert.All(Kind(day.Kind).Demands.Where(d => d.Quality is TrainedQuality.MaximalStrength or TrainedQuality.ExplosivePower or TrainedQuality.UpperBodyPower), d => Assert.True(d.MostPercent < 80, day.Kind));
    }

    [Fact]
    public void Sources_AreListedOrSaidToBeNone()
    {
        var references = File.ReadAllText(Path.Combine(Repository.Root, "docs", "references.md"));
        var sources = Kit.Schemes.Select(s => s.Source).Concat(Kit.Kinds.Select(k => k.Source)).Concat(Kit.Shapes.Select(s => s.Source)).Concat(Kit.Rules.All.Select(r => r.Source)).Distinct();
        Assert.All(sources, s => Assert.True(s.Contains(' ', StringComparison.Ordinal) || references.Contains($"- **{s}** ", StringComparison.Ordinal), s));
        Assert.All(Regex.Matches(ShippedTraining.Text("exercises.csv"), @"\[(\w+)\]").Select(m => m.Groups[1].Value), k => Assert.Contains($"- **{k}** ", references, StringComparison.Ordinal));
    }

    [Fact]
    public void Text_OfNoFile_SaysSo() => Assert.Contains("No file 'x.csv'", Assert.Throws<ArgumentException>(() => ShippedTraining.Text("x.csv")).Message, StringComparison.Ordinal);
}

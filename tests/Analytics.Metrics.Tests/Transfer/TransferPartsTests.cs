using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Profile;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Transfer;
using Analytics.Metrics.Trials;
using Analytics.Statistics.Association;

namespace Analytics.Metrics.Tests.Transfer;

public sealed class TransferPartsTests
{
    [Fact]
    public void Slope_is_in_both_units_and_holds_the_true_one()
    {
        var slope = TransferStudyTests.Study(new(60, 0.9)).Pairs[0].Slope!;
        Assert.Equal(("s per kg", 60, ""), (slope.Unit, slope.Athletes, slope.Reason));
        // True: 0.9 × 0.05 s over 8 kg.
        Assert.True(slope.Interval!.Value.Contains(0.9 * 0.05 / 8));
        Assert.NotNull(slope.Deming);
        // The same days in both: the ratio of the errors is that of the squared typical errors, (0.02/3)², as far as 59 retests know them.
        Assert.InRange(slope.ErrorRatio!.Value, 0.00004444 / 2, 0.00004444 * 2);
    }

    [Fact]
    public void Slope_is_withheld_when_weight_room_changes_may_be_error_alone()
    {
        var season = new InventedSeason(30, 0.9);
        Metric noisy = InventedSeason.Lifts[0] with { Id = "same", Label = "same", FromTrials = day => InventedSeason.Lifts[0].FromTrials(day).Select(v => v with { Value = 100 + 40 * Math.Sin(v.Value * 977) }) };
        var slope = TransferStudy.Of(season.Profile, (List<Metric>)[noisy], InventedSeason.Runs, season.Days, new Dictionary<string, AthleteBackground>()).Pairs[0].Slope!;
        Assert.Null(slope.Slope);
        Assert.Null(slope.Deming);
        Assert.Contains("do not differ between players by more than error alone gives", slope.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Unrelated_changes_have_no_line_with_error_in_both()
    {
        var slope = TransferStudyTests.Study(new(23, 0, seed: 3)).Pairs[0].Slope!;
        Assert.NotNull(slope.Interval);
        Assert.Null(slope.Deming);
        Assert.Contains("not discernibly related", slope.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_form_of_the_day_shared_by_both_tests_shows_on_the_retest_days_and_is_taken_off()
    {
        var pair = TransferStudyTests.Study(new(80, 0, form: 0.9)).Pairs[0];
        // True 0.9; standard error (1 − 0.9²)/√79 = 0.02.
        Assert.InRange(pair.Errors!.OnRetestDays!.Value, 0.8, 1);
        Assert.Equal(80, pair.Errors.OnRetestDays.N);
        Assert.InRange(pair.Errors.AroundLines!.Value, 0.8, 1);
        // What is told of the errors is what was taken off; 1e-12: the same arithmetic in another order.
        Assert.Equal(pair.Gains!.Raw - pair.Errors.OfGains!.Value, pair.Gains.Value, 1e-12);
        Assert.True(pair.Errors.OfGains > 0.1);
    }

    [Fact]
    public void Falling_back_follows_the_reliability_of_the_start()
    {
        var measure = TransferStudyTests.Study(new(400, 0)).WeightRoom[0];
        // The same draw worked out outside the program: typical error 2.73756 kg, SD of the starts (means of two days) 3.41727 kg, (1 − r) SD = 2.7376²/2/3.4173 = 1.0965 kg. To the digits written.
        Assert.Equal(2.7376, measure.TypicalError!.Value, 1e-4);
        Assert.Equal(1.0965, measure.FallBack!.Value, 2e-4);
    }

    [Fact]
    public void Training_years_stand_before_the_year_of_birth_and_neither_is_told()
    {
        Dictionary<string, AthleteBackground> Of(Func<int, AthleteBackground> make) => Enumerable.Range(1, 40).ToDictionary(i => $"a{i}", make);
        var season = new InventedSeason(40, 0.9);
        var years = TransferStudyTests.Study(season, Of(i => new(i % 6, 2000 + i % 5))).Pairs[0].Background!;
        Assert.Equal(("training years", 40, 0), (years.Covariate, years.Athletes, years.LeftOut));
        Assert.True(years.RemainingInterval!.Value.Contains(years.Remaining!.Value));
        var birth = TransferStudyTests.Study(season, Of(i => i <= 5 ? new(3) : new(null, 2000 + i % 5))).Pairs[0].Background!;
        Assert.Equal(("year of birth in place of training years", 35, 5), (birth.Covariate, birth.Athletes, birth.LeftOut));
        var none = TransferStudyTests.Study(season).Pairs[0].Background!;
        Assert.Contains("training age is left out", none.Basis, StringComparison.Ordinal);
        Assert.NotNull(none.Remaining);
    }

    [Fact]
    public void A_background_that_shapes_both_gains_is_what_remains_is_freed_of()
    {
        var season = new InventedSeason(60, 1);
        // Training years in step with the common gain: what is left after them is much less than before.
        var last = season.Days[4].ToDictionary(d => d.AthleteId, d => InventedSeason.Value(d, "lift_a"));
        var first = season.Days[0].ToDictionary(d => d.AthleteId, d => InventedSeason.Value(d, "lift_a"));
        var pair = TransferStudyTests.Study(season, last.ToDictionary(l => l.Key, l => new AthleteBackground(10 - 0.3 * (l.Value - first[l.Key])))).Pairs[0];
        Assert.True(pair.Background!.FromBackground > 0.5);
        Assert.True(pair.Background.Remaining < pair.Gains!.Raw - 0.2);
    }

    [Fact]
    public void A_value_estimated_among_measured_ones_counts_for_less()
    {
        DayValue Value(EquationError? equation) => new("a1", Invented.March, 140, [], null, []) { Equation = equation };
        var five = new EquationError("E", 4, 0, 1);
        // TE 3: 9/(9 + 16 + 1) for the one estimated; measured ones are as usual.
        Assert.Equal([1, 1, 9.0 / 26, 1], ValuePrecision.Of([Value(null), Value(null), Value(five), Value(null)], 3, holdsFresh: false));
        // Always estimated: the lasting error cancels, the fresh one does not, unless the retest holds it.
        Assert.Equal([0.9, 0.9], ValuePrecision.Of([Value(five), Value(five)], 3, holdsFresh: false));
        Assert.Equal([1.0, 1.0], ValuePrecision.Of([Value(five), Value(five)], 3, holdsFresh: true));
        Assert.Equal([1.0, 1.0], ValuePrecision.Of([Value(five), Value(null)], null, holdsFresh: false));
    }

    [Fact]
    public void Inputs_of_catalogue_metrics_are_found_by_trying()
    {
        var lift = new LiftSet { AthleteId = "a", Date = Invented.March, Lift = "back_squat", Load = Quantities.Mass.FromKilograms(150), Repetitions = 1 };
        IReadOnlyList<IReadOnlyList<AthleteDay>> days = [[new() { AthleteId = "a", Date = Invented.March, BodyMass = Quantities.Mass.FromKilograms(100), Trials = [lift] }]];
        Assert.Equal(["sets of the back squat"], SharedInputs.Of(MetricCatalogue.Get("back_squat_1rm"), days));
        Assert.Equal(["body mass", "sets of the back squat"], SharedInputs.Of(MetricCatalogue.Get("back_squat_relative"), days));
    }
}

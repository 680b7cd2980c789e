using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Tests.Profile;
using Analytics.Metrics.Transfer;
using Analytics.Metrics.Trials;

namespace Analytics.Metrics.Tests.Transfer;

public sealed class TransferStudyTests
{
    private static readonly Dictionary<string, AthleteBackground> s_none = [];

    [Fact]
    public void All_pairs_are_shown_in_the_order_given_and_gain_goes_with_gain()
    {
        var study = Study(new(40, 0.9));
        Assert.Equal(
            [("lift_a", "run_a"), ("lift_a", "run_b"), ("lift_b", "run_a"), ("lift_b", "run_b")],
            study.Pairs.Select(p => (p.WeightRoom.Metric.Id, p.Field.Metric.Id)));
        Assert.Equal(5, study.Dates.Count);
        var linked = study.Pairs[0];
        // Times fall as loads rise: in the sense of gains the association is positive.
        Assert.Equal(TransferVerdict.WentTogether, linked.Verdict);
        // True 0.9, standard error about 0.1 with 40 players; two each way, not clipped.
        Assert.InRange(linked.Gains!.OfTrueGains!.Value, 0.7, 1.1);
        Assert.StartsWith("Gains in lift_a went with gains in run_a beyond what the calendar explains: r of true gains 0.", linked.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("all 4 pairs taken together, 40 players. Not proof that one made the other.", linked.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("In 1 of 4 pairs of measures gains in the weight room went with gains on the field", study.Sentence, StringComparison.Ordinal);
        Assert.Contains("chance alone would show about 0.2.", study.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Verdicts_and_intervals_take_the_number_of_pairs_into_account()
    {
        var study = Study(new(40, 0.9));
        double[] p = [.. study.Pairs.Select(x => x.Gains!.P!.Value)];
        var least = study.Pairs.MinBy(x => x.Gains!.P)!;
        // 1e-12: the same arithmetic in another order. Holm: the smallest of four p counts four times, the largest once or as much as the one before it.
        Assert.Equal(4 * p.Min(), least.AdjustedP!.Value, 1e-12);
        Assert.All(study.Pairs, x => Assert.True(x.AdjustedP >= x.Gains!.P));
        Assert.All(study.Pairs, x => Assert.Equal(0.9875, x.Simultaneous!.Value.Level, 1e-12));
        Assert.All(study.Pairs, x => Assert.True(x.Simultaneous!.Value.Low < x.Gains!.Interval!.Value.Low && x.Simultaneous.Value.High > x.Gains.Interval.Value.High));
        Assert.Equal(4, study.Judged);
        Assert.Equal(0.2, study.ByChance.Expected, 1e-12);
    }

    [Fact]
    public void The_calendar_alone_is_no_evidence()
    {
        var study = Study(new(23, 0, seed: 3));
        var pair = study.Pairs[0];
        // Everybody gets stronger and faster: the raw figure is high and says nothing.
        Assert.True(pair.Classic!.P < 0.001 && pair.OverSeason!.Value > 0.3);
        Assert.Equal(TransferVerdict.NotTold, pair.Verdict);
        Assert.StartsWith("Lift_a and run_a: no evidence either way with 23 players (r of true gains ", pair.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("No evidence that weight-room gains went with field gains in any of 4 pairs of measures, with 23 players; this is not evidence of none.", study.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_players_without_a_link_speak_against_a_strong_one()
    {
        var pair = Study(new(150, 0)).Pairs[0];
        Assert.Equal(TransferVerdict.AgainstStrongLink, pair.Verdict);
        Assert.Contains("the data speak against a strong link between gains: below 0.", pair.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Gains_that_do_not_differ_between_players_cannot_go_together()
    {
        var pair = Study(new(30, 0.9, secondsGain: 0)).Pairs[0];
        Assert.Equal(TransferVerdict.NoSpreadSeen, pair.Verdict);
        Assert.Contains("gains in run_a do not differ between players by more than error", pair.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Sentences_never_say_that_one_made_the_other()
    {
        string[] banned = ["caus", "led to", "because", "thanks to", "produced", "improved by", "significant"];
        foreach (var study in new[] { Study(new(40, 0.9)), Study(new(150, 0)), Study(new(6, 0.5)), Study(new(40, -0.9)) })
            foreach (var sentence in study.Pairs.Select(p => p.Sentence).Append(study.Sentence)) Assert.DoesNotContain(banned, b => sentence.Contains(b, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void Too_few_players_are_told_and_shown()
    {
        var study = Study(new(6, 0.9));
        Assert.All(study.Pairs, p => Assert.Equal(TransferVerdict.NotComputed, p.Verdict));
        Assert.Contains("6 players were seen long enough in both; 10 are needed.", study.Pairs[0].Sentence, StringComparison.Ordinal);
        Assert.StartsWith("Whether weight-room gains reached the field cannot be told", study.Sentence, StringComparison.Ordinal);
    }

    // With two days there is nothing around the lines to read the form of the day off.
    [Fact]
    public void With_two_days_the_form_of_the_day_is_said_to_be_still_in_it()
    {
        const string said = "Too few testing days: what a good day gives to both tests is still in it.";
        var season = new InventedSeason(40, 0.9);
        var study = TransferStudy.Of(season.Profile with { Retests = [] }, InventedSeason.Lifts, InventedSeason.Runs, [season.Days[0], season.Days[4]], s_none);
        Assert.Null(study.Pairs[0].Gains!.ReliabilityX);
        Assert.All(study.Pairs, p => Assert.Contains(said, p.Sentence, StringComparison.Ordinal));
        Assert.Contains(said, study.Sentence, StringComparison.Ordinal);
        Assert.DoesNotContain(said, Study(season).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_player_tested_a_day_late_belongs_to_the_testing_day()
    {
        var season = new InventedSeason(40, 0.9);
        season.Days[4][3] = season.Days[4][3] with { Date = season.Days[4][3].Date.AddDays(1) };
        var moved = Study(season);
        Assert.Equal(5, moved.Dates.Count);
        Assert.Equal(Study(new(40, 0.9)).Pairs[0].Gains!.Value, moved.Pairs[0].Gains!.Value, 1e-12);
    }

    [Fact]
    public void Lists_that_make_no_sense_are_refused()
    {
        var season = new InventedSeason(12, 0);
        Assert.Contains("given twice", Assert.Throws<ArgumentException>(() => TransferStudy.Of(season.Profile, InventedSeason.Lifts, InventedSeason.Lifts, season.Days, s_none)).Message, StringComparison.Ordinal);
        Assert.Contains("No field metric", Assert.Throws<ArgumentException>(() => TransferStudy.Of(season.Profile, InventedSeason.Lifts, (List<Metric>)[], season.Days, s_none)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Measures_made_from_the_same_input_are_flagged()
    {
        var season = new InventedSeason(30, 0.5);
        Metric Per(string id, Metric of, double power) => Invented.Metric(id) with
        {
            PlausibleLow = 0.1,
            FromTrials = day => of.FromTrials(day).Select(v => v with { Value = v.Value * Math.Pow(day.BodyMass!.Value.Kilograms, power) }),
        };
        var study = TransferStudy.Of(season.Profile, (List<Metric>)[Per("per_mass", InventedSeason.Lifts[0], -1)], [Per("momentum", InventedSeason.Runs[0], 1), InventedSeason.Runs[1]], season.Days, s_none);
        Assert.Equal(["body mass"], study.Pairs[0].SharedInputs);
        Assert.Contains("Both are made from body mass: part of any association is arithmetic.", study.Pairs[0].Sentence, StringComparison.Ordinal);
        Assert.Empty(study.Pairs[1].SharedInputs);
    }

    internal static TransferStudy Study(InventedSeason season, IReadOnlyDictionary<string, AthleteBackground>? backgrounds = null)
        => TransferStudy.Of(season.Profile, InventedSeason.Lifts, InventedSeason.Runs, season.Days, backgrounds ?? s_none);
}

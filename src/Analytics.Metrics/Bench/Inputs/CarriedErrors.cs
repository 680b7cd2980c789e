using Analytics.Metrics.Profile;
using Analytics.Metrics.Seasons;
using Analytics.Metrics.Sketching;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics;
using Analytics.Statistics.Association;
using Analytics.Statistics.Resampling;

namespace Analytics.Metrics.Bench.Inputs;

/// <summary>The Monte Carlo behind <see cref="PropagatedError"/>: variances of the metric, in its unit squared, averaged over players.</summary>
internal sealed record CarriedErrors(IReadOnlyList<InputError> Inputs, IReadOnlyList<string> TakenAsExact, double ByThemselves, double? Together, double DegreesOfFreedom)
{
    // 30 players × 60 draws give the carried error to about 2 % of itself, less than it is known to.
    private const int MostDays = 30;
    private const int Draws = 60;
    private const double Nudge = 1.01;
    // More than any squad gives: then all errors are taken as known.
    private const double MostDf = 1e9;
    private const string Film = "readings of film";

    /// <summary>Identifiers of the metrics that measure the inputs the formula uses.</summary>
    public required IReadOnlyList<string> Measures { get; init; }

    private sealed record Known(InputField Field, SeasonValues Values, MetricReliability Reliability)
    {
        /// <summary>Typical error as a share of a value.</summary>
        public double Share(double value) => value > 0 && Reliability.ErrorAt(value) is { } error ? error / value : 0;

        public double At(AthleteDay day) => Share(Values.Of(day.AthleteId).FirstOrDefault(v => v.Date == day.Date)?.Value ?? Middle);

        /// <summary>Interval of the share at the middle, in percent; that of the typical error, to which it is in proportion.</summary>
        public Interval PercentInterval => Reliability.Error!.Interval().Times(100 * Share(Middle) / Reliability.Error.Value);

        public double Middle { get; } = Values.Values.Count > 0 ? Values.Values.Average(v => v.Value) : 0;
    }

    public static CarriedErrors Of(BenchSquad squad, MetricSketch sketch, SeasonValues values, TestQuality quality)
    {
        List<AthleteDay> first = [.. squad.Days.SelectMany(d => d).Where(d => values.Of(d.AthleteId).Any(v => v.Date == d.Date))
            .OrderBy(d => d.Date).ThenBy(d => d.AthleteId, StringComparer.Ordinal).DistinctBy(d => d.AthleteId)];
        // Spread over the squad list, which as a rule goes by groups: linemen alone would not speak for the squad.
        var taken = Math.Min(MostDays, first.Count);
        List<DayFormula> days = [.. Enumerable.Range(0, taken).Select(i => DayFormula.Of(sketch, first[i * first.Count / taken], values.Series)).OfType<DayFormula>()];
        // Where the error seen is a share of the value, so must this one be, or players with high values would count for more here than there.
        var level = values.Reliability(squad.Profile).Scale == ErrorScale.Proportional ? quality.Level : null;
        var used = squad.Inputs.Where(f => days.Any(d => Uses(d, day => f.Times(day, Nudge)))).ToList();
        var fields = used.ConvertAll(f => new Known(f, squad.Values(f.Measure), squad.Values(f.Measure).Reliability(squad.Profile)));
        List<string> measures = used.ConvertAll(f => f.Measure.Id);
        var known = fields.Where(f => f.Reliability.HoldsDayToDayVariation && f.Middle > 0).ToList();
        var notCarried = NotCarried(days).ToList();
        var exact = fields.Except(known).Select(f => f.Field.Name).Concat(notCarried).ToList();
        if (notCarried.Contains(Film)) measures.Add("contact_time");
        if (known.Count == 0 || days.Count == 0) return new([], exact, 0, null, 0) { Measures = measures };

        double[] single = [.. known.Select((_, i) => Variance(days, known, level, (draws, z) => z[i] = draws.Next()))];
        var sum = single.Sum();
        // The sum of variances each known with its own degrees of freedom [satterthwaite1946]; one that is taken as known adds none.
        var df = sum <= 0 ? 0 : sum * sum / Math.Max(single.Zip(known, (v, k) => v * v / k.Reliability.DegreesOfFreedom).Sum(), double.Epsilon);
        var alone = known.Count == 1 ? sum : Variance(days, known, level, (draws, z) => { for (var i = 0; i < z.Length; i++) z[i] = draws.Next(); });
        var inputs = known.Select((k, i) => new InputError(k.Field.Name, 100 * k.Share(k.Middle), k.PercentInterval, k.Reliability.Source == ErrorSource.SeasonRetest, k.Reliability.Basis, sum > 0 ? single[i] / sum : 0))
            .OrderByDescending(i => i.Share).ThenBy(i => i.Name, StringComparer.Ordinal).ToList();
        return new(inputs, exact, sum > 0 ? alone : 0, Joint(squad, days, known, level), df > MostDf ? double.PositiveInfinity : df) { Measures = measures };
    }

    private static double? Joint(BenchSquad squad, List<DayFormula> days, List<Known> known, double? level)
    {
        var n = known.Count;
        if (n < 2) return null;
        var correlations = new double[n, n];
        var found = false;
        for (var i = 0; i < n; i++)
            for (var j = 0; j < i; j++)
                if (ErrorsTogether(squad, known[i].Values, known[j].Values) is { } r) (correlations[i, j], correlations[j, i], found) = (r, r, true);
        if (!found) return null;
        var joint = new CorrelatedDraws(correlations);
        return Variance(days, known, level, (draws, z) => joint.Next(draws).CopyTo(z, 0));
    }

    // What differs between retest days is error; how the differences of two inputs go together is how their errors do.
    private static double? ErrorsTogether(BenchSquad squad, SeasonValues a, SeasonValues b)
    {
        if (RetestColumns.Fullest(squad, a) is not { } days) return null;
        var both = days.Athletes.Select(id => (A: days.Pair(a, id), B: days.Pair(b, id))).Where(p => p.A is not null && p.B is not null).ToList();
        if (both.Count < squad.Rule.Fewest) return null;
        double[] x = [.. both.Select(p => p.A!.Value.Second - p.A.Value.First)], y = [.. both.Select(p => p.B!.Value.Second - p.B.Value.First)];
        return !Flat.Is(x) && !Flat.Is(y) ? Correlation.Pearson(x, y).Value : null;
    }

    private static double Variance(List<DayFormula> days, List<Known> known, double? level, Action<NormalDraws, double[]> errors)
    {
        // One seed for all: two runs then differ by what is asked, not by their luck.
        var draws = new NormalDraws(1);
        var (squares, count) = (0.0, 0);
        foreach (var day in days)
        {
            double[] share = [.. known.Select(k => k.At(day.Day))];
            for (var d = 0; d < Draws; d++)
            {
                var z = new double[known.Count];
                errors(draws, z);
                var other = day.Day;
                for (var i = 0; i < z.Length; i++)
                    if (z[i] != 0) other = known[i].Field.Times(other, Math.Max(1 + z[i] * share[i], 0.01));
                if (day.With(other) is not { } value) continue;
                var miss = (value - day.Value) * (level is { } l && day.Value != 0 ? l / Math.Abs(day.Value) : 1);
                squares += miss * miss;
                count++;
            }
        }

        return count > 0 ? squares / count : 0;
    }

    private static IEnumerable<string> NotCarried(List<DayFormula> days)
    {
        if (days.Any(d => Uses(d, day => day with { Stature = day.Stature * Nudge }))) yield return "stature";
        if (days.Any(d => d.Day.Of<ContactTrial>().Any() && Uses(d, day => day with { Trials = [.. day.Trials.Where(t => t is not ContactTrial)] }))) yield return Film;
    }

    private static bool Uses(DayFormula day, Func<AthleteDay, AthleteDay> change)
        => change(day.Day) is var other && !ReferenceEquals(other, day.Day) && (day.With(other) is not { } value || Math.Abs(value - day.Value) > 1e-12 * Math.Abs(day.Value));
}

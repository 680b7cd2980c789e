using Analytics.Metrics.Catalogue;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Quantities;
using Analytics.Statistics.Reliability;

namespace Analytics.Metrics.ChangeOfDirection;

/// <summary>Deficit and asymmetry from the 505 runs of a day; they need both sides, the deficit a 10 m sprint time by the same method too.</summary>
internal static class TurnMetrics
{
    private static readonly Length TenMetres = Length.FromMetres(10);

    public static IReadOnlyList<Metric> All { get; } =
    [
        new()
        {
            Id = "cod_deficit",
            Label = "Change-of-direction deficit",
            Unit = "s",
            Decimals = 2,
            Better = Direction.Lower,
            Quality = Quality.ChangeOfDirection,
            Rule = TrialRule.Mean,
            RuleReason = "One value a day: mean of both sides' mean times less the mean sprint time.",
            FromTrials = day => Turns(day).SelectMany(t => Sprints(day, t).Select(s => Deficit(t, s))),
            PlausibleLow = 0.1,
            PlausibleHigh = 1.5,
            Meaning = "What half a turn costs beyond running 10 m straight: takes sprint speed out of the 505. Faster runners tend to lose more.",
            Formula = "mean 505 time, left and right alike, − mean 10 m time [s]; one series for each start of the sprint",
            Sources = ["nimphius2016", "dossantos2019"],
        },
        new()
        {
            Id = "cod_asymmetry",
            Label = "505 asymmetry",
            Unit = "%",
            Decimals = 1,
            Better = Direction.Lower,
            Quality = Quality.ChangeOfDirection,
            Rule = TrialRule.Mean,
            RuleReason = "One value a day, from the mean time of each side.",
            FromTrials = day => Turns(day).Select(t => Value(t.Asymmetry(Duration.Zero), SprintSeries.Of(t.Timing))),
            PlausibleLow = 0,
            PlausibleHigh = 30,
            Meaning = "How much slower the slower turn is. Small ones are within the error of the times; the size alone, the side is in the doubt beside it.",
            Formula = "(slower − faster)/faster · 100 %, mean time of each side",
            Sources = ["dossantos2019"],
        },
        new()
        {
            Id = "cod_deficit_asymmetry",
            Label = "Deficit asymmetry",
            Unit = "%",
            Decimals = 0,
            Better = Direction.Lower,
            Quality = Quality.ChangeOfDirection,
            Rule = TrialRule.Mean,
            RuleReason = "One value a day, from the mean time of each side.",
            FromTrials = day => Turns(day).SelectMany(t => Sprints(day, t).Where(s => t.Faster > s.Time).Select(s => Value(t.Asymmetry(s.Time), s.Series))),
            PlausibleLow = 0,
            PlausibleHigh = 150,
            Meaning = "How much larger the deficit of the slower turn is. Divided by a small number: several times the asymmetry of times, and so is its error.",
            Formula = "(larger − smaller deficit)/smaller · 100 %, deficits against the mean 10 m time",
            Sources = ["dossantos2019"],
        },
    ];

    private static IEnumerable<TwoSides> Turns(AthleteDay day)
        => from run in day.Of<AgilityTrial>()
           where run.Test == "505" && run.Side is not null && run.Time > Duration.Zero
           group run by run.Timing into runs
           let left = Seconds(runs, Side.Left)
           let right = Seconds(runs, Side.Right)
           where left.Length > 0 && right.Length > 0
           select new TwoSides(runs.Key, left, right);

    private static IEnumerable<(Duration Time, string Series)> Sprints(AthleteDay day, TwoSides turns)
        => from sprint in day.Of<SprintTrial>()
           where sprint.Timing == turns.Timing && sprint.TimeAt(TenMetres) > Duration.Zero
           group sprint.TimeAt(TenMetres)!.Value.Seconds by sprint.Start into times
           select (Duration.FromSeconds(times.Average()), SprintSeries.Of(turns.Timing, times.Key));

    private static TrialValue Deficit(TwoSides turns, (Duration Time, string Series) sprint)
        => new(((turns.Left.Average() + turns.Right.Average()) / 2) - sprint.Time.Seconds, null, sprint.Series);

    private static TrialValue Value(SideAsymmetry asymmetry, string series)
        => new(Math.Abs(asymmetry.Percent), asymmetry.StandardErrorPercent, series, Doubt(asymmetry),
            asymmetry.StandardErrorPercent is not null && double.IsFinite(asymmetry.DegreesOfFreedom) ? (int)asymmetry.DegreesOfFreedom : null);

    private static string? Doubt(SideAsymmetry a)
    {
        var side = a.Percent == 0 ? null : $"{(a.Percent > 0 ? "right" : "left")} slower";
        return a.Interval is { } i && i.Contains(0) ? SprintReading.Join(side, "within the error of this day's runs") : side;
    }

    private static double[] Seconds(IEnumerable<AgilityTrial> runs, Side side) => [.. runs.Where(r => r.Side == side).Select(r => r.Time.Seconds)];

    private sealed record TwoSides(TimingMethod Timing, double[] Left, double[] Right)
    {
        public Duration Faster => Duration.FromSeconds(Math.Min(Left.Average(), Right.Average()));

        /// <summary>Asymmetry of times, or of what is left of them after the sprint; error from the scatter of the runs of each side where there is any.</summary>
        public SideAsymmetry Asymmetry(Duration less)
        {
            var df = Left.Length + Right.Length - 2;
            var typical = df > 0 ? TypicalErrors.FromAttempts([Left, Right]).Value : 0;
            Duration? Error(double[] side) => typical > 0 ? Duration.FromSeconds(typical / Math.Sqrt(side.Length)) : null;
            // The error of the sprint moves both deficits alike and so hardly their asymmetry; it is left out.
            return SideAsymmetry.Make("figure", Duration.FromSeconds(Left.Average()) - less, Duration.FromSeconds(Right.Average()) - less, AsymmetryDenominator.Faster,
                Error(Left), Error(Right), Duration.Zero, df > 0 ? df : double.PositiveInfinity);
        }
    }
}

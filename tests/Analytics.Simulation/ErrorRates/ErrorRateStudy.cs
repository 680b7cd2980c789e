using Analytics.Metrics.Sprinting.Fits;
using Analytics.Simulation.Demo;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.ErrorRates;

/// <summary>Everything counted in one scenario.</summary>
public sealed class ErrorRateStudy
{
    private static readonly string[] Lifts = ["back_squat_1rm", "bench_press_1rm", "power_clean_1rm"];

    /// <summary>Half of the 5 lb by which the bar goes up.</summary>
    private const double HalfStepKilograms = 2.5 * 0.45359237;

    private ErrorRateStudy(Scenario scenario, int seasons, ulong seed) => (Scenario, Seasons, Seed) = (scenario, seasons, seed);

    public Scenario Scenario { get; }

    public int Seasons { get; }

    public ulong Seed { get; }

    public SprintFitRates Chosen { get; } = new(null);

    public SprintFitRates RunIn { get; } = new(StartModel.RunIn);

    public SprintFitRates Still { get; } = new(StartModel.Still);

    public IReadOnlyList<EstimatedMaximumRates> Estimated { get; } = EstimatedMaximumRates.Kinds();

    public IReadOnlyList<DayValueRates> DayValues { get; } =
    [
        new(JudgedMetric.Get("max_speed"), SeasonCalendar.June),
        new(JudgedMetric.Get("max_speed"), SeasonCalendar.June) { Remade = RunFits.WithRunIn(c => c.TopSpeed), Remark = ", unseen run-in" },
        new(JudgedMetric.Get("acceleration_time_constant"), SeasonCalendar.June),
        new(JudgedMetric.Get("acceleration_time_constant"), SeasonCalendar.June) { Remade = RunFits.WithRunIn(c => c.TimeConstant), Remark = ", unseen run-in" },
        new(JudgedMetric.Get("momentum_10yd"), SeasonCalendar.June),
        .. Lifts.Select(l => new DayValueRates(JudgedMetric.Get(l), SeasonCalendar.June) { MeasuredOnly = true, Remark = ", measured" }),
        .. Lifts.Select(l => new DayValueRates(JudgedMetric.Get(l), SeasonCalendar.June) { MeasuredOnly = true, HalfStep = HalfStepKilograms, Remark = ", against the step below" }),
    ];

    /// <summary>From the first day to the last, every metric; lifts measured on both days.</summary>
    public IReadOnlyList<ChangeRates> OverTheSeason { get; } = Changes(SeasonCalendar.Baseline, SeasonCalendar.June);

    /// <summary>From the day before the last to the last.</summary>
    public IReadOnlyList<ChangeRates> SinceApril { get; } = Changes(SeasonCalendar.April, SeasonCalendar.June);

    /// <summary>Lifts by how the two values were come by: January to March (sets) and January to June.</summary>
    public IReadOnlyList<ChangeRates> MixedLifts { get; } =
    [
        .. Lifts[..2].Select(l => new ChangeRates(JudgedMetric.Get(l), SeasonCalendar.Baseline, SeasonCalendar.March, LiftPair.OneOfEach)),
        .. Lifts[..2].Select(l => new ChangeRates(JudgedMetric.Get(l), SeasonCalendar.Baseline, SeasonCalendar.March, LiftPair.BothEstimated)),
        .. Lifts[..2].Select(l => new ChangeRates(JudgedMetric.Get(l), SeasonCalendar.Baseline, SeasonCalendar.June, LiftPair.BothEstimated)),
    ];

    public IReadOnlyList<HitRates> Hits { get; } =
    [
        .. JudgedMetric.All.Where(m => m.Qualities.Count == 1).SelectMany(m => new[] { new HitRates(m, ErrorSize.Small), new HitRates(m, ErrorSize.Large) }),
    ];

    public HeldBackRates HeldBack { get; } = new();

    /// <summary>Regenerates the seasons one after the other; season i has seed + i.</summary>
    public static ErrorRateStudy Run(Scenario scenario, int seasons, ulong seed, Action<int>? progress = null)
    {
        var study = new ErrorRateStudy(scenario, seasons, seed);
        for (var season = 0; season < seasons; season++)
        {
            study.Add(SeasonChain.Run(season, seed + (ulong)season, scenario.Options));
            progress?.Invoke(season + 1);
        }

        return study;
    }

    private void Add(SeasonChain chain)
    {
        Chosen.Add(chain);
        RunIn.Add(chain);
        Still.Add(chain);
        foreach (var rates in Estimated) rates.Add(chain);
        foreach (var rates in DayValues) rates.Add(chain);
        foreach (var rates in OverTheSeason.Concat(SinceApril).Concat(MixedLifts)) rates.Add(chain);
        if (Scenario.Options.Changes == ChangePlan.TypicalErrors)
            foreach (var rates in Hits) rates.Add(chain);
        HeldBack.Add(chain);
    }

    private static IReadOnlyList<ChangeRates> Changes(int from, int to)
        => [.. JudgedMetric.All.Select(m => new ChangeRates(m, from, to, Lifts.Contains(m.Id) ? LiftPair.BothMeasured : null))];
}

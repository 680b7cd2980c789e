using System.Globalization;
using Analytics.Metrics.Sprinting;
using Analytics.Metrics.Trials;
using Analytics.Simulation.SprintStarts;

namespace Analytics.Simulation.Commands;

/// <summary><c>sprint-starts [--seed N] [--squads N]</c>: the table of start models in docs/methods/sprinting.md.</summary>
public static class SprintStartsCommand
{
    public const string Usage = "sprint-starts [--seed N] [--squads N]      bias and interval coverage of the split fits by start type";

    private static readonly double[] Three = [10, 20, 40];
    private static readonly double[] Four = [5, 10, 20, 40];

    private static readonly (StartType Start, double[] Yards, double RunIn, double Late)[] Cases =
    [
        (StartType.FirstMovement, Three, 0, 0), (StartType.FirstMovement, Four, 0, 0),
        (StartType.Signal, Four, 0, 0.15),
        (StartType.StandingBeam, Four, 0.5, 0), (StartType.StandingBeam, Four, 0.3, 0), (StartType.StandingBeam, Four, 0.1, 0), (StartType.StandingBeam, Four, 0, 0),
        (StartType.StandingBeam, Four, 0, 0.03), (StartType.StandingBeam, Four, 0, 0.06),
        (StartType.ThreePointHand, Four, 0, 0), (StartType.ThreePointHand, Four, 0.15, 0), (StartType.ThreePointHand, Four, 0.3, 0), (StartType.ThreePointHand, Four, 0, 0.06),
        (StartType.StandingBeam, Three, 0.3, 0), (StartType.ThreePointHand, Three, 0.3, 0), (StartType.Signal, Three, 0, 0.15),
    ];

    public static int Run(Arguments arguments, TextWriter output)
    {
        var seed = (ulong)arguments.Number("--seed", 20260302);
        var squads = (int)arguments.Number("--squads", 100);
        output.WriteLine("| start | gates (yd) | true run-in (m) | clock early (s) | timing SD (s) | model fitted | V bias, SD (m/s) | T bias, SD (s) | speed at 10 yd bias, SD (m/s) | coverage V, T, speed (%) |");
        output.WriteLine("|---|---|---|---|---|---|---|---|---|---|");
        foreach (var sd in new[] { 0.01, 0.02 })
            foreach (var (start, yards, runIn, late) in Cases)
                output.WriteLine(Row(new(start, yards, runIn, late, sd), new StartCase(start, yards, runIn, late, sd).Run(seed, squads)));
        return 0;
    }

    private static string Row(StartCase c, StartTally t)
    {
        var model = SplitModelChoice.For(c.Start, c.Yards.Length).Model;
        var fallback = model != Metrics.Sprinting.Fits.StartModel.Still && t.StillStart > 0
            ? string.Create(CultureInfo.InvariantCulture, $" ({100.0 * t.StillStart / t.Runs:0.0} % still)")
            : "";
        return string.Create(CultureInfo.InvariantCulture,
            $"| {SprintSeries.InWords(c.Start)} | {string.Join(' ', c.Yards)} | {c.RunInMetres} | {c.LateSeconds} | {c.TimingSd} | {model}{fallback} | {Miss(t.TopSpeed)} | {Miss(t.TimeConstant)} | {Miss(t.SpeedAtTenYards)} | {t.TopSpeed.CoveragePercent:0.0}, {t.TimeConstant.CoveragePercent:0.0}, {t.SpeedAtTenYards.CoveragePercent:0.0} |");
    }

    private static string Miss(MissTally m) => string.Create(CultureInfo.InvariantCulture, $"{m.Bias:+0.000;−0.000;0}, {m.Sd:0.000}");
}

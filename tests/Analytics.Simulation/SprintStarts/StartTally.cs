using Analytics.Metrics.Sprinting.Fits;
using Analytics.Statistics;

namespace Analytics.Simulation.SprintStarts;

/// <summary>How fitted values of one case missed the truth.</summary>
internal sealed class StartTally
{
    public MissTally TopSpeed { get; } = new();

    public MissTally TimeConstant { get; } = new();

    public MissTally SpeedAtTenYards { get; } = new();

    public int Runs { get; private set; }

    public int StillStart { get; private set; }

    public void Count(StartModel model)
    {
        Runs++;
        if (model == StartModel.Still) StillStart++;
    }
}

/// <summary>Bias, spread and coverage of one quantity.</summary>
internal sealed class MissTally
{
    private double sum, squares;
    private int n, held;

    public double Bias => sum / n;

    public double Sd => Math.Sqrt((squares / n) - (Bias * Bias));

    public double CoveragePercent => 100.0 * held / n;

    public void Add(Estimate estimate, double truth)
    {
        var miss = estimate.Value - truth;
        (sum, squares, n) = (sum + miss, squares + (miss * miss), n + 1);
        if (estimate.Interval is { } interval && interval.Contains(truth)) held++;
    }
}

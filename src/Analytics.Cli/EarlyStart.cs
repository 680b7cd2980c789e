using Analytics.Cli.Rehearsing;
using Analytics.Runner.Kernels;
using Analytics.Runner.Pages;

namespace Analytics.Cli;

/// <summary>
/// The slow parts of a run, begun before the command line is even read: the kernel, which warms the compiler, and on a
/// second processor a rehearsal of the report.
/// </summary>
internal static class EarlyStart
{
    private static Task<InteractiveKernel>? kernel;

    /// <summary>The chart library of the pages.</summary>
    public static ChartScript Charts { get; } = new(
        PlotlyScript.ReadPacked,
        "Charts are drawn by plotly.js 2.28.0, Copyright 2012-2024 Plotly, Inc., under the MIT licence, as packed in Plotly.NET.");

    /// <summary>Begins them in the background. Nothing waits for the rehearsal, and nothing needs it.</summary>
    public static void Begin()
    {
        kernel = Task.Run(NewKernel);
        _ = Task.Factory.StartNew(Prepare, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    /// <summary>The kernel begun early, or a new one.</summary>
    public static IRepeatingKernel Kernel()
        => Interlocked.Exchange(ref kernel, null)?.GetAwaiter().GetResult() ?? NewKernel();

    private static void Prepare()
    {
        // With one processor a rehearsal would only be in the way.
        if (Environment.ProcessorCount > 1)
            new Rehearsal(Rehearsal.OwnSeason).Run(Charts);
        Charts.Prepare();
    }

    private static InteractiveKernel NewKernel() => new(new HostAssemblies(AppContext.BaseDirectory), static () => { });
}

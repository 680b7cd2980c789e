using Analytics.Runner.Kernels;
using Analytics.Runner.Pages;

namespace Analytics.Cli;

/// <summary>
/// The two slow parts of a run, the kernel and the packing of the chart library, begun before the command line
/// is even read. Together they are most of a short run, and each needs a processor for itself.
/// </summary>
internal static class EarlyStart
{
    private static Task<InteractiveKernel>? kernel;

    /// <summary>The chart library of the pages.</summary>
    public static ChartScript Charts { get; } = new(
        PlotlyScript.Read,
        "Charts are drawn by plotly.js 2.28.0, Copyright 2012-2024 Plotly, Inc., under the MIT licence, as packed in Plotly.NET.");

    /// <summary>Begins both in the background.</summary>
    public static void Begin()
    {
        kernel = Task.Run(NewKernel);
        _ = Task.Run(Charts.Prepare);
    }

    /// <summary>The kernel begun early, or a new one.</summary>
    public static INotebookKernel Kernel()
        => Interlocked.Exchange(ref kernel, null)?.GetAwaiter().GetResult() ?? NewKernel();

    private static InteractiveKernel NewKernel() => new(new HostAssemblies(AppContext.BaseDirectory), static () => { });
}

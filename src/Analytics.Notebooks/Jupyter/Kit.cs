using System.Runtime.Loader;
using Analytics.Notebooks.Jupyter;

namespace Analytics.Notebooks;

/// <summary>Makes the library ready in a notebook.</summary>
public static class Kit
{
    private static readonly Lock Gate = new();
    private static ChartAssemblies? _chartAssemblies;

    /// <summary>
    /// Call it once, in the cell that references the library and before anything of it is used. It lets charts
    /// work in kernels that ship an older F# library than the charts are built with, and lets the solver find its
    /// native library; in this project's own runner, and when called again, it does nothing.
    /// </summary>
    public static void Start()
    {
        var assembly = typeof(Kit).Assembly;
        // A program that ships this library has resolved the right versions when it was built.
        if (AssemblyLoadContext.GetLoadContext(assembly) == AssemblyLoadContext.Default) return;
        var folder = Path.GetDirectoryName(assembly.Location)!;
        lock (Gate)
        {
            if (_chartAssemblies is null) SolverLibrary.Offer(folder);
            _chartAssemblies ??= ChartAssemblies.Offer(folder);
        }
    }
}

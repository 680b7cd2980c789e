using System.Reflection;
using System.Runtime.Loader;

namespace Analytics.Notebooks.Jupyter;

/// <summary>
/// The chart library and the F# library it is built with, in a place of their own. The .NET kernel for Jupyter has
/// an older F# library loaded, a process cannot hold two versions in one place, and asking for the newer one there
/// fails; this then offers the one beside it.
/// </summary>
internal sealed class ChartAssemblies : AssemblyLoadContext
{
    private static readonly HashSet<string> Names = new(StringComparer.OrdinalIgnoreCase)
    {
        "FSharp.Core", "Plotly.NET", "Plotly.NET.CSharp", "Plotly.NET.Interactive", "DynamicObj", "Giraffe.ViewEngine", "Fable.Core",
    };

    private readonly string _folder;

    private ChartAssemblies(string folder) : base("Charts") => _folder = folder;

    /// <summary>Starts to answer for the chart library wherever the process cannot find it by itself.</summary>
    /// <param name="folder">The folder that holds the assemblies.</param>
    public static ChartAssemblies Offer(string folder)
    {
        var charts = new ChartAssemblies(folder);
        Default.Resolving += (_, name) => charts.Load(name);
        return charts;
    }

    /// <inheritdoc/>
    protected override Assembly? Load(AssemblyName assemblyName)
    {
        if (assemblyName.Name is not { } name || !Names.Contains(name)) return null;
        try
        {
            return LoadFromAssemblyPath(Path.Combine(_folder, name + ".dll"));
        }
        catch (FileNotFoundException)
        {
            return null;
        }
    }
}

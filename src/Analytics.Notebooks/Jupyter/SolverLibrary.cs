using System.Runtime.InteropServices;
using System.Runtime.Loader;

namespace Analytics.Notebooks.Jupyter;

/// <summary>
/// The native library of the solver. A program knows from its list of dependencies in which folder that of its machine
/// lies; a notebook kernel that loads the assemblies alone does not, and asks here.
/// </summary>
internal static class SolverLibrary
{
    private const string Solver = "Google.OrTools";
    private const string Native = "google-ortools-native";

    /// <summary>Starts to answer for the library in whatever context the solver is loaded.</summary>
    /// <param name="folder">The folder that holds the assemblies.</param>
    public static void Offer(string folder)
    {
        foreach (var context in AssemblyLoadContext.All) context.ResolvingUnmanagedDll += (_, name) => Load(folder, name);
        AppDomain.CurrentDomain.AssemblyLoad += (_, loaded) =>
        {
            if (loaded.LoadedAssembly.GetName().Name == Solver && AssemblyLoadContext.GetLoadContext(loaded.LoadedAssembly) is { } own)
                own.ResolvingUnmanagedDll += (_, name) => Load(folder, name);
        };
    }

    /// <summary>Where the library of this machine lies, seen from the folder of the assemblies.</summary>
    internal static string Place()
    {
        var system = OperatingSystem.IsWindows() ? "win" : OperatingSystem.IsMacOS() ? "osx" : "linux";
        var file = OperatingSystem.IsWindows() ? Native + ".dll" : OperatingSystem.IsMacOS() ? Native + ".dylib" : Native + ".so";
        return Path.Combine("runtimes", $"{system}-{RuntimeInformation.ProcessArchitecture.ToString().ToLowerInvariant()}", "native", file);
    }

    private static nint Load(string folder, string name)
    {
        if (!name.Contains(Native, StringComparison.Ordinal)) return 0;
        // A published program has it beside the assemblies.
        foreach (var file in new[] { Path.Combine(folder, Place()), Path.Combine(folder, Path.GetFileName(Place())) })
            if (NativeLibrary.TryLoad(file, out var handle)) return handle;
        return 0;
    }
}

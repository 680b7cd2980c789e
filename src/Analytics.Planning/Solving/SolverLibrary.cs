using System.Reflection;
using System.Runtime.InteropServices;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>
/// The solver's native library, for a process that was not built with it: the .NET kernel for Jupyter loads assemblies from wherever a cell names them, but
/// does not look into the folder of native files beside them.
/// </summary>
public static class SolverLibrary
{
    private static readonly Lock Gate = new();
    private static bool _offered;

    /// <summary>Offers the native library beside the assemblies. Call it once before anything is planned; called again, it does nothing.</summary>
    /// <param name="folder">The folder that holds the assemblies.</param>
    public static void Offer(string folder)
    {
        lock (Gate)
        {
            if (_offered) return;
            NativeLibrary.SetDllImportResolver(typeof(CpModel).Assembly, (name, assembly, search) => Load(folder, name, assembly, search));
            _offered = true;
        }
    }

    private static IntPtr Load(string folder, string name, Assembly assembly, DllImportSearchPath? search)
    {
        var (system, ending) = OperatingSystem.IsWindows() ? ("win", ".dll") : OperatingSystem.IsMacOS() ? ("osx", ".dylib") : ("linux", ".so");
        var machine = RuntimeInformation.ProcessArchitecture == Architecture.Arm64 ? "arm64" : "x64";
        return NativeLibrary.TryLoad(Path.Combine(folder, "runtimes", $"{system}-{machine}", "native", name + ending), assembly, search, out var library) ? library : IntPtr.Zero;
    }
}

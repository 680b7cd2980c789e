using System.Collections.Concurrent;
using System.Reflection;
using System.Reflection.PortableExecutable;
using Microsoft.CodeAnalysis;

namespace Analytics.Runner.Kernels;

/// <summary>
/// The compiler's view of assemblies, read once a process and shared by all cells: what it learns about a file while
/// it compiles one cell it need not learn again for the next.
/// </summary>
internal static class ReferenceFiles
{
    private static readonly ConcurrentDictionary<(string Path, DateTime Written), Lazy<PortableExecutableReference>> Known = [];
    private static readonly Lazy<Dictionary<string, string>> OfProgram = new(FilesOfProgram);

    /// <summary>The reference to an assembly that is loaded.</summary>
    public static PortableExecutableReference Of(Assembly assembly) => Of(assembly.Location);

    /// <summary>The reference to a file.</summary>
    /// <param name="path">Full path of the assembly.</param>
    public static PortableExecutableReference Of(string path) => Known.GetOrAdd((path, File.GetLastWriteTimeUtc(path)), static key => new(() => Read(key.Path))).Value;

    /// <summary>The file of an assembly of this program or of the run time, by simple name; null when neither has it.</summary>
    public static string? FindOfProgram(string simpleName) => OfProgram.Value.GetValueOrDefault(simpleName);

    /// <summary>The references to all assemblies of the run time.</summary>
    public static IEnumerable<PortableExecutableReference> OfRunTime()
    {
        var folder = Path.GetDirectoryName(typeof(object).Assembly.Location);
        return OfProgram.Value.Values.Where(f => Path.GetDirectoryName(f) == folder).Order(StringComparer.Ordinal).Select(Of);
    }

    private static PortableExecutableReference Read(string path)
    {
        using var file = File.OpenRead(path);
        // Only the descriptions are needed; the code in the file, which is most of it, is not.
        return AssemblyMetadata.CreateFromStream(file, PEStreamOptions.PrefetchMetadata).GetReference(filePath: path, display: path);
    }

    private static Dictionary<string, string> FilesOfProgram()
        => (AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES") as string ?? "")
            .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
            .GroupBy(p => Path.GetFileNameWithoutExtension(p), StringComparer.OrdinalIgnoreCase)
            .ToDictionary(g => g.Key, g => g.First(), StringComparer.OrdinalIgnoreCase);
}

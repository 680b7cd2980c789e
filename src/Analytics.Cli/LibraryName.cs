using System.Reflection;

namespace Analytics.Cli;

/// <summary>Name and version as reports give them.</summary>
internal static class LibraryName
{
    public static string Text { get; } = Make();

    private static string Make()
    {
        var assembly = typeof(LibraryName).Assembly;
        var product = assembly.GetCustomAttribute<AssemblyProductAttribute>()!.Product;
        var version = assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
        return $"{product} {version}";
    }
}

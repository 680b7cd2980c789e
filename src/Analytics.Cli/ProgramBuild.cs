using System.Security.Cryptography;
using System.Text;

namespace Analytics.Cli;

/// <summary>Tells one build of this program's libraries from another, also where their version is the same.</summary>
internal static class ProgramBuild
{
    private const string Own = "Analytics.";

    /// <summary>SHA-256 over the identities the compiler gave them, which follow from their source.</summary>
    public static string Digest { get; } = Make();

    private static string Make()
    {
        var own = typeof(ProgramBuild).Assembly;
        var libraries = own.GetReferencedAssemblies().Where(a => a.Name!.StartsWith(Own, StringComparison.Ordinal)).OrderBy(a => a.Name, StringComparer.Ordinal)
            .Select(a => System.Reflection.Assembly.Load(a)).Prepend(own);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', libraries.Select(a => $"{a.GetName().Name} {a.ManifestModule.ModuleVersionId}")))));
    }
}

using System.Text.RegularExpressions;

namespace Analytics.Runner.Kernels;

/// <summary>
/// The assemblies this program ships. A notebook names them by the path a build puts them in, so that it also
/// runs elsewhere; here the program's own copy has to be used, or one type would exist twice.
/// </summary>
public sealed partial class HostAssemblies
{
    private readonly string folder;

    /// <summary>Makes the set.</summary>
    /// <param name="folder">The folder that holds them, normally that of the program.</param>
    public HostAssemblies(string folder) => this.folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));

    /// <summary>Lets references to assemblies shipped here point here. The number of lines stays as it is.</summary>
    /// <param name="source">Code of a cell.</param>
    public string Redirect(string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Reference().Replace(source, match =>
        {
            var file = match.Groups["file"].Value.Replace('\\', '/').Split('/')[^1];
            var own = Path.Combine(folder, file);
            return File.Exists(own) ? $"#r \"{own}\"" : match.Value;
        });
    }

    /// <summary>Whether code takes in files that are not shipped here, or talks to the kernel itself.</summary>
    /// <param name="source">Code of a cell, redirected.</param>
    public bool LeadsOutside(string source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return Inclusion().Matches(source).Any(m => m.Groups["file"] is not { Success: true } file || Path.GetDirectoryName(file.Value) != folder);
    }

    [GeneratedRegex("""^[ \t]*#(?:r[ \t]+"(?<file>[^"]+)"|r\b|load\b|!)""", RegexOptions.Multiline)]
    private static partial Regex Inclusion();

    [GeneratedRegex("""^[ \t]*#r[ \t]+"(?<file>(?!nuget:)[^"]+\.dll)"[ \t]*""", RegexOptions.Multiline | RegexOptions.IgnoreCase)]
    private static partial Regex Reference();
}

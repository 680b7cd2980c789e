using System.Xml.Linq;

namespace Analytics.Cli.Tests.Architecture;

/// <summary>What a project file says it may use.</summary>
internal sealed record ProjectFile(string Name, IReadOnlyList<string> Projects, IReadOnlyList<string> Packages)
{
    public static ProjectFile Read(string name)
    {
        var xml = XDocument.Load(Repository.Path("src", name, name + ".csproj"));
        return new(name,
            [.. Includes(xml, "ProjectReference").Select(p => Path.GetFileNameWithoutExtension(p.Replace('\\', '/'))).Order(StringComparer.Ordinal)],
            [.. Includes(xml, "PackageReference").Order(StringComparer.Ordinal)]);
    }

    private static IEnumerable<string> Includes(XDocument xml, string element)
        => xml.Descendants(element).Select(e => (string?)e.Attribute("Include") ?? throw new InvalidDataException($"{element} without Include"));
}

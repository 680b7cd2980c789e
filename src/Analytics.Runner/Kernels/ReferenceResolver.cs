using System.Collections.Immutable;
using Microsoft.CodeAnalysis;

namespace Analytics.Runner.Kernels;

/// <summary>Finds what <c>#r</c> names, and what an assembly so found needs in turn.</summary>
/// <param name="folder">Where relative paths start, unless the line stands in a loaded file with a folder of its own.</param>
internal sealed class ReferenceResolver(string folder) : MetadataReferenceResolver, IEquatable<ReferenceResolver>
{
    private readonly string folder = folder;

    /// <inheritdoc/>
    public override bool ResolveMissingAssemblies => true;

    /// <inheritdoc/>
    public override ImmutableArray<PortableExecutableReference> ResolveReference(string reference, string? baseFilePath, MetadataReferenceProperties properties)
    {
        ArgumentNullException.ThrowIfNull(reference);
        return Find(reference, baseFilePath) is { } file ? [ReferenceFiles.Of(file).WithProperties(properties)] : [];
    }

    /// <inheritdoc/>
    public override PortableExecutableReference? ResolveMissingAssembly(MetadataReference definition, AssemblyIdentity referenceIdentity)
    {
        ArgumentNullException.ThrowIfNull(referenceIdentity);
        if (ReferenceFiles.FindOfProgram(referenceIdentity.Name) is { } own)
            return ReferenceFiles.Of(own);
        if (definition is not PortableExecutableReference { FilePath: { } needs })
            return null;
        var beside = Path.Combine(Path.GetDirectoryName(needs)!, referenceIdentity.Name + ".dll");
        return File.Exists(beside) ? ReferenceFiles.Of(beside) : null;
    }

    /// <inheritdoc/>
    public bool Equals(ReferenceResolver? other) => other?.folder == folder;

    /// <inheritdoc/>
    public override bool Equals(object? other) => Equals(other as ReferenceResolver);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(folder);

    private string? Find(string reference, string? baseFilePath)
    {
        var isPath = reference.EndsWith(".dll", StringComparison.OrdinalIgnoreCase) || reference.EndsWith(".exe", StringComparison.OrdinalIgnoreCase)
            || reference.AsSpan().ContainsAny('/', '\\');
        if (!isPath)
            return ReferenceFiles.FindOfProgram(reference.Split(',')[0].Trim());
        var start = Path.IsPathRooted(baseFilePath) ? Path.GetDirectoryName(baseFilePath)! : folder;
        var file = Path.GetFullPath(reference, start);
        return File.Exists(file) ? file : ReferenceFiles.FindOfProgram(Path.GetFileNameWithoutExtension(reference));
    }
}

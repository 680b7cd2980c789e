using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;

namespace Analytics.Cli.Tests.Architecture;

/// <summary>A member of another assembly that some code uses: <c>System.Console.WriteLine(string)</c>.</summary>
internal sealed record UsedMember(string Type, string Name, string Parameters)
{
    public override string ToString() => $"{Type}.{Name}({Parameters})";
}

/// <summary>What a compiled assembly uses, read from its metadata without loading it.</summary>
internal sealed class CompiledAssembly
{
    private CompiledAssembly(string name, IReadOnlyList<string> references, IReadOnlyList<UsedMember> members, IReadOnlyList<string> cultureBound)
        => (Name, References, Members, CultureBoundText) = (name, references, members, cultureBound);

    public string Name { get; }

    /// <summary>Assemblies the code really uses; a project reference nobody uses is not here.</summary>
    public IReadOnlyList<string> References { get; }

    /// <summary>Members of other assemblies named anywhere in the code.</summary>
    public IReadOnlyList<UsedMember> Members { get; }

    /// <summary>Methods that put a number or date into an interpolated string without naming a culture.</summary>
    public IReadOnlyList<string> CultureBoundText { get; }

    /// <summary>Reads an assembly beside the tests.</summary>
    public static CompiledAssembly Read(string name)
    {
        using var file = new PEReader(File.OpenRead(Path.Combine(AppContext.BaseDirectory, name + ".dll")));
        var metadata = file.GetMetadataReader();
        var names = new MemberNames(metadata);
        return new(name,
            [.. metadata.AssemblyReferences.Select(r => metadata.GetString(metadata.GetAssemblyReference(r).Name)).Order(StringComparer.Ordinal)],
            [.. metadata.MemberReferences.Select(names.Of).OfType<UsedMember>().Distinct()],
            [.. metadata.MethodDefinitions.Where(m => IsCultureBound(file, metadata, names, m)).Select(m => names.Of((EntityHandle)m)!.ToString()).Order(StringComparer.Ordinal)]);
    }

    // $"{x}" becomes a handler made with (int, int) — the current culture — and AppendFormatted<T>; string.Create(culture, $"...") hands
    // the culture to the constructor. Each AppendFormatted is put down to the handler made last before it.
    private static bool IsCultureBound(PEReader file, MetadataReader metadata, MemberNames names, MethodDefinitionHandle handle)
    {
        var method = metadata.GetMethodDefinition(handle);
        if (method.RelativeVirtualAddress == 0) return false;
        var named = true;
        foreach (var call in IntermediateCode.Calls(file.GetMethodBody(method.RelativeVirtualAddress)).Select(names.Of).OfType<UsedMember>())
        {
            if (call.Name == ".ctor" && call.Type.EndsWith("InterpolatedStringHandler", StringComparison.Ordinal))
                named = call.Parameters.Contains("IFormatProvider", StringComparison.Ordinal);
            else if (!named && CultureBound.Contains(call.Name))
                return true;
        }
        return false;
    }

    private static readonly HashSet<string> CultureBound = [.. new[]
        { "Double", "Single", "System.Decimal", "System.DateOnly", "System.TimeOnly", "System.DateTime", "System.DateTimeOffset" }.Select(t => $"AppendFormatted<{t}>")];
}

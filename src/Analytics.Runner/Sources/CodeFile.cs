using System.Globalization;
using System.Security.Cryptography;
using Analytics.Runner.Documents;
using Analytics.Runner.Files;

namespace Analytics.Runner.Sources;

/// <summary>Code that stands in a file: a C# script, or the cells of a notebook that carry a tag.</summary>
/// <param name="Name">File name without folder.</param>
/// <param name="Sha256">Digest of the whole file.</param>
/// <param name="Parts">The code, in order.</param>
public sealed record CodeFile(string Name, string Sha256, IReadOnlyList<CodePart> Parts)
{
    /// <summary>Ending of a file that is C# from its first line.</summary>
    public const string ScriptEnding = ".csx";

    /// <summary>Reads a file.</summary>
    /// <param name="path">A notebook (<c>.ipynb</c>) or C# (<c>.csx</c>).</param>
    /// <param name="tag">Tag of the cells that are meant.</param>
    /// <exception cref="NotebookException">There is no such file, it cannot be read, or no cell carries the tag.</exception>
    public static CodeFile Read(string path, string tag)
    {
        var name = Path.GetFileName(path);
        var isScript = name.EndsWith(ScriptEnding, StringComparison.OrdinalIgnoreCase);
        if (!isScript && !name.EndsWith(".ipynb", StringComparison.OrdinalIgnoreCase))
            throw new NotebookException(Fault.Usage, $"'{path}' is neither a notebook (.ipynb) nor a file of C# ({ScriptEnding}).");
        var bytes = NotebookFile.Read(path, isScript ? "file" : "notebook");
        var text = NotebookFile.Decode(bytes, name);
        return new(name, Convert.ToHexStringLower(SHA256.HashData(bytes)), isScript ? [new(Label(name), text.ReplaceLineEndings("\n"))] : Tagged(text, name, tag));
    }

    private static List<CodePart> Tagged(string json, string name, string tag)
    {
        var parts = new List<CodePart>();
        var number = 0;
        foreach (var cell in NotebookDocument.Parse(json, name).Cells.Where(c => c.IsCode && !CellTag.Injected.Any(c.HasTag)))
        {
            number++;
            if (cell.HasTag(tag) && cell.Source.Trim().Length > 0)
                parts.Add(new(string.Create(CultureInfo.InvariantCulture, $"{Label(name)}, cell {number}"), cell.Source));
        }

        return parts.Count > 0 ? parts
            : throw new NotebookException(Fault.Usage, $"No code cell of '{name}' is tagged '{tag}', so it is not known which are meant. Give the cells this tag (cell tags of a notebook editor) and save the notebook.");
    }

    // The compiler reads it in a line of code; a file name may hold anything.
    private static string Label(string name) => string.Concat(name.Select(c => c is '"' or '\\' || char.IsControl(c) ? '_' : c));
}

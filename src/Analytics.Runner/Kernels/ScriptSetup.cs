using System.Text;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Formatting;

namespace Analytics.Runner.Kernels;

/// <summary>What cells are compiled with: the names they may use without a using, debug places, and where files are found.</summary>
internal sealed class ScriptSetup
{
    // As the stock kernel has them; the last one lets cells call display, HTML and the like by their bare names.
    private static readonly string[] Imports =
    [
        "System", "System.Text", "System.Collections", "System.Collections.Generic", "System.Threading.Tasks", "System.Linq",
        typeof(Kernel).FullName!,
    ];

    private string? folder;
    private ScriptOptions options = ScriptOptions.Default
        .WithLanguageVersion(LanguageVersion.CSharp14)
        .WithImports(Imports)
        .AddReferences(ReferenceFiles.Of(typeof(object).Assembly), ReferenceFiles.Of(typeof(Enumerable).Assembly), ReferenceFiles.Of(typeof(Kernel).Assembly), ReferenceFiles.Of(typeof(Formatter).Assembly))
        // Without file and encoding the compiler refuses to write down source places, which traces need.
        .WithEmitDebugInformation(true)
        .WithFilePath("notebook")
        .WithFileEncoding(Encoding.UTF8);

    /// <summary>The options for cells of a notebook in this folder: relative paths in <c>#r</c> and <c>#load</c> start there.</summary>
    public ScriptOptions For(string currentFolder)
    {
        if (folder == currentFolder)
            return options;
        folder = currentFolder;
        return options = options
            .WithMetadataResolver(new ReferenceResolver(currentFolder))
            .WithSourceResolver(ScriptSourceResolver.Default.WithBaseDirectory(currentFolder));
    }
}

using System.Globalization;
using System.Reflection;
using Analytics.Runner.Kernels;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Analytics.Runner.Sources;

/// <summary>A source file of a library, compiled on trial in memory as its project would: warnings are errors, documentation is read.</summary>
/// <param name="Errors">What the compiler says, with lines from 1; empty when the file compiles.</param>
/// <param name="UnneededUsings">Lines of using directives nothing needs, from 1.</param>
/// <param name="Assembly">The compiled file; null when it does not compile.</param>
public sealed record LibraryFile(IReadOnlyList<(int Line, string Message)> Errors, IReadOnlyList<int> UnneededUsings, Assembly? Assembly)
{
    private const string UnneededUsing = "CS8019";

    // A type that stands both in the library and here means the one here; it is the newer one.
    private static readonly string[] s_ours = ["CS0436"];

    // Those the SDK gives every project.
    private const string ImplicitUsings = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";

    /// <summary>Compiles a file.</summary>
    /// <param name="source">C#.</param>
    /// <param name="references">Assemblies it may use beyond those of the run time.</param>
    public static LibraryFile Compile(string source, IEnumerable<Assembly> references)
    {
        ArgumentNullException.ThrowIfNull(references);
        var parsing = new CSharpParseOptions(LanguageVersion.Latest, DocumentationMode.Diagnose);
        var tree = CSharpSyntaxTree.ParseText(source, parsing);
        var compilation = CSharpCompilation.Create(
            "trial_" + Guid.NewGuid().ToString("N", CultureInfo.InvariantCulture),
            [tree, CSharpSyntaxTree.ParseText(ImplicitUsings, parsing)],
            ReferenceFiles.OfRunTime().Concat(references.Select(ReferenceFiles.Of)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable, generalDiagnosticOption: ReportDiagnostic.Error, warningLevel: 9999));
        using var bytes = new MemoryStream();
        var made = compilation.Emit(bytes);
        var own = compilation.GetDiagnostics().Concat(made.Diagnostics).Where(d => d.Location.SourceTree == tree).ToList();
        var errors = own.Where(d => d.Severity >= DiagnosticSeverity.Warning && !s_ours.Contains(d.Id)).Select(d => (LineOf(d), $"{d.Id}: {d.GetMessage(CultureInfo.InvariantCulture)}")).Distinct().ToList();
        if (errors.Count == 0 && !made.Success) errors.Add((1, made.Diagnostics.First(d => d.Severity == DiagnosticSeverity.Error).ToString()));
        return new(errors, [.. own.Where(d => d.Id == UnneededUsing).Select(LineOf).Distinct().Order()], errors.Count == 0 ? Assembly.Load(bytes.ToArray()) : null);
    }

    private static int LineOf(Diagnostic diagnostic) => diagnostic.Location.GetLineSpan().StartLinePosition.Line + 1;
}

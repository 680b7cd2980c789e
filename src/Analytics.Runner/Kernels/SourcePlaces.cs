using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.CSharp;

namespace Analytics.Runner.Kernels;

/// <summary>Makes traces name the cell and the line in it; the stock kernel compiles without source places.</summary>
internal static class SourcePlaces
{
    private const int AddedLines = 1;

    /// <summary>
    /// Switches source places on. The kernel offers no public way, so this reaches for its options; where they
    /// cannot be found the run goes on and messages only lack the line of run-time errors.
    /// </summary>
    public static void Enable(CSharpKernel kernel)
    {
        var field = typeof(CSharpKernel).GetField("_scriptOptions", BindingFlags.Instance | BindingFlags.NonPublic);
        if (field?.GetValue(kernel) is ScriptOptions options)
            field.SetValue(kernel, options.WithEmitDebugInformation(true).WithFilePath("notebook").WithFileEncoding(Encoding.UTF8));
    }

    /// <summary>The code with its cell's label in front.</summary>
    public static string Label(string label, string source) => $"#line 1 \"{label}\"\n{source}";

    /// <summary>Line in the cell, from 1, of a line of the labelled code counted from 0.</summary>
    public static int? LineOf(int labelledLine) => Math.Max(1, labelledLine + 1 - AddedLines);
}

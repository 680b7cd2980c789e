using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Analytics.Runner.Kernels;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Scripting;

namespace Analytics.Runner.Sources;

/// <summary>Runs code of a file in this process, outside any notebook, and hands out what its variables hold.</summary>
/// <remarks>The types of the values are this program's own. Code that never ends cannot be stopped, only left behind.</remarks>
public sealed class CodeEvaluation
{
    private readonly HostAssemblies host;
    private readonly ScriptOptions options;

    /// <summary>Says what the code may use without naming it.</summary>
    /// <param name="host">The assemblies this program ships, used also where the code names them by another path.</param>
    /// <param name="folder">Where relative paths in <c>#r</c> and <c>#load</c> start.</param>
    /// <param name="usings">Namespaces beyond those of every cell.</param>
    /// <param name="references">Assemblies beyond those of every cell.</param>
    public CodeEvaluation(HostAssemblies host, string folder, IEnumerable<string> usings, IEnumerable<Assembly> references)
    {
        ArgumentNullException.ThrowIfNull(host);
        this.host = host;
        options = new ScriptSetup().For(Path.GetFullPath(folder)).AddImports(usings).AddReferences(references.Select(ReferenceFiles.Of));
    }

    /// <summary>Runs the parts, each knowing those before it.</summary>
    /// <param name="parts">The code.</param>
    /// <param name="names">Top-level variables whose values are wanted.</param>
    /// <param name="limit">How long it may take.</param>
    /// <returns>The values in the order of the names; of several variables with one name the last.</returns>
    /// <exception cref="NotebookException">It does not compile, fails, takes too long or has no such variable; the message names place and line.</exception>
    public async Task<IReadOnlyList<object?>> ValuesAsync(IReadOnlyList<CodePart> parts, IReadOnlyList<string> names, TimeSpan limit)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(names);
        var work = Task.Run(() => RunAsync(parts));
        try
        {
            var state = await work.WaitAsync(limit).ConfigureAwait(false);
            return [.. names.Select(n => (state?.GetVariable(n) ?? throw new NotebookException(Fault.Data, $"The code declares no variable '{n}'.")).Value)];
        }
        catch (TimeoutException e)
        {
            throw new NotebookException(Fault.Data, string.Create(CultureInfo.InvariantCulture, $"{parts[0].Place}: the code was still running after {limit.TotalSeconds:0} s and was left. It must come to an end by itself."), e);
        }
    }

    private async Task<ScriptState<object>?> RunAsync(IReadOnlyList<CodePart> parts)
    {
        Script<object>? script = null;
        ScriptState<object>? state = null;
        foreach (var part in parts)
        {
            script = CompiledAhead.Following(script, $"#line 1 \"{part.Place}\"\n{host.Redirect(part.Code)}", options);
            if (script.Compile().Where(d => d.Severity == DiagnosticSeverity.Error).ToList() is [_, ..] errors)
            {
                var error = new CellCompileException(errors);
                throw Fails(part, error.Line, error.Message, error);
            }

            state = state is null ? await script.RunAsync(globals: null, static _ => true).ConfigureAwait(false) : await script.RunFromAsync(state, static _ => true).ConfigureAwait(false);
            if (state.Exception is { } e) throw Fails(part, LineOf(e, part), $"{e.GetType().Name}: {e.Message}", e);
        }

        return state;
    }

    private static NotebookException Fails(CodePart part, int? line, string message, Exception cause)
        => new(Fault.Data, string.Create(CultureInfo.InvariantCulture, $"{part.Place}{(line is null ? "" : $", line {line}")}: {message}"), cause);

    // The stack trace is the only place where the run time tells source lines.
    private static int? LineOf(Exception exception, CodePart part)
        => Regex.Matches(exception.StackTrace ?? "", $@"{Regex.Escape(part.Place)}:line (\d+)").LastOrDefault() is { } place ? int.Parse(place.Groups[1].ValueSpan, CultureInfo.InvariantCulture) : null;
}

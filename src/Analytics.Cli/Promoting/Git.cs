using System.ComponentModel;
using System.Diagnostics;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Asks git about one working copy.</summary>
/// <param name="root">Its folder.</param>
internal sealed class Git(string root)
{
    /// <summary>What git says, without the last line end; null when it refuses.</summary>
    public string? Ask(params string[] arguments) => Run(arguments) is (0, var output, _) ? output.TrimEnd('\n', '\r') : null;

    /// <summary>Lets git do something.</summary>
    /// <exception cref="NotebookException">It refuses.</exception>
    public void Do(params string[] arguments)
    {
        var (code, _, error) = Run(arguments);
        if (code != 0) throw new NotebookException(Fault.Data, $"git {arguments[0]} refused: {PlainLine.Whole(error.Trim().Split('\n')[0])}");
    }

    private (int Code, string Out, string Error) Run(string[] arguments)
    {
        // Questions must not touch the index, which another git may hold just then.
        var start = new ProcessStartInfo("git", ["--no-optional-locks", "-C", root, .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        // Inside a hook of git these name another working copy.
        foreach (var name in new[] { "GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE" }) start.Environment.Remove(name);
        try
        {
            using var process = Process.Start(start)!;
            var error = process.StandardError.ReadToEndAsync();
            var output = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, output, error.GetAwaiter().GetResult());
        }
        catch (Win32Exception e)
        {
            throw new NotebookException(Fault.Data, "The program git was not found. It is needed to see what is committed and to make the new files undoable; install it.", e);
        }
    }
}

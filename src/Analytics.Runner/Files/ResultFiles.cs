using System.Text.RegularExpressions;

namespace Analytics.Runner.Files;

/// <summary>
/// Writes the results of a run so that a reader never meets half of one: all are written in full under other
/// names, and only then put in place.
/// </summary>
/// <param name="open">Opens a file for writing; another one than the disk's can be given to see what a full disk does.</param>
public sealed partial class ResultFiles(Func<string, Stream>? open = null)
{
    private readonly Func<string, Stream> open = open ?? (path => new FileStream(path, FileMode.Create, FileAccess.Write));

    /// <summary>Makes the folder and sees that it can be written, before time is spent on a run.</summary>
    /// <param name="target">Where the results will go.</param>
    /// <exception cref="NotebookException">It cannot.</exception>
    public void Prepare(ResultTarget target)
    {
        ArgumentNullException.ThrowIfNull(target);
        var folder = Path.GetDirectoryName(target.Page)!;
        var trial = Temporary(target.Page);
        Guarded(folder, [trial], () =>
        {
            Directory.CreateDirectory(folder);
            using (open(trial))
            {
            }

            File.Delete(trial);
        });
    }

    /// <summary>Writes all results or none.</summary>
    /// <param name="target">Where they go.</param>
    /// <param name="content">What they hold.</param>
    /// <exception cref="NotebookException">They cannot be written; what was there before is as it was.</exception>
    public void Write(ResultTarget target, ResultContent content)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(content);
        // The page last: where it is, the others are.
        (string Path, byte[] Bytes)[] all = [.. content.Tables.Select((t, i) => (target.Table(i), t)), (target.Notebook, content.Notebook), (target.Page, content.Page)];
        Guarded(Path.GetDirectoryName(target.Page)!, [.. all.Select(f => Temporary(f.Path))], () =>
        {
            foreach (var (path, bytes) in all)
                WriteAll(Temporary(path), bytes);
            foreach (var (path, _) in all)
                File.Move(Temporary(path), path, overwrite: true);
        });
    }

    /// <summary>Writes one more file, in full or not at all.</summary>
    /// <param name="path">Its full path.</param>
    /// <param name="content">What it holds.</param>
    /// <exception cref="NotebookException">It cannot be written; what was there before is as it was.</exception>
    public void Write(string path, byte[] content)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(content);
        var temporary = Temporary(path);
        Guarded(Path.GetDirectoryName(path)!, [temporary], () =>
        {
            WriteAll(temporary, content);
            File.Move(temporary, path, overwrite: true);
        });
    }

    /// <summary>Takes away what a process that was killed has left half written. Only to be called when no other is at work on these files.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="names">Names of the files that were to be written.</param>
    internal static void CleanUp(string folder, IEnumerable<string> names)
    {
        var known = names.ToHashSet(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(folder, ".*.tmp").Where(f => TemporaryName().Match(Path.GetFileName(f)) is { Success: true } match && known.Contains(match.Groups["name"].Value)))
            TryDelete(file);
    }

    private void WriteAll(string path, byte[] bytes)
    {
        using var stream = open(path);
        stream.Write(bytes);
        stream.Flush();
    }

    private static string Temporary(string path)
        => Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.{Environment.ProcessId}.tmp");

    [GeneratedRegex(@"^\.(?<name>.+)\.\d+\.tmp$", RegexOptions.Singleline)]
    private static partial Regex TemporaryName();

    private static void Guarded(string folder, string[] temporary, Action write)
    {
        try
        {
            write();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            foreach (var file in temporary)
                TryDelete(file);
            throw new NotebookException(Fault.Data, $"The results cannot be written to '{folder}': {e.Message.TrimEnd('.')}. Nothing there was changed; free some space or give another folder with --out.", e);
        }
    }

    private static void TryDelete(string file)
    {
        try
        {
            File.Delete(file);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The message about the first failure is the one that helps.
        }
    }
}

using System.Text;
using Analytics.Runner;

namespace Analytics.Cli.Promoting;

/// <summary>Writes what was planned, all of it or nothing.</summary>
/// <param name="open">Opens a file for writing; another one than the disk's can be given to see what a full disk does.</param>
internal sealed class PlanWriter(Func<string, FileMode, Stream>? open = null)
{
    private readonly Func<string, FileMode, Stream> _open = open ?? ((path, mode) => new FileStream(path, mode, FileAccess.Write));

    /// <exception cref="NotebookException">Something could not be written; everything is as it was.</exception>
    public void Write(PromotionPlan plan)
    {
        var before = plan.Files.Where(f => !f.IsNew).ToDictionary(f => f.Path, f => File.ReadAllBytes(plan.Home.Full(f.Path)));
        var begun = new List<PlannedFile>();
        var folders = new List<string>();
        string[] added = [.. plan.Files.Where(f => f.IsNew).Select(f => f.Path)];
        try
        {
            foreach (var file in plan.Files)
            {
                Make(Path.GetDirectoryName(plan.Home.Full(file.Path))!, folders);
                Put(plan.Home.Full(file.Path), file, begun);
            }

            plan.Home.Git.Do(["add", "--", .. added]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotebookException)
        {
            TakeBack(plan, begun, before, folders);
            plan.Home.Git.Ask(["reset", "--quiet", "--", .. added]);
            throw new NotebookException(Fault.Data, $"The metric could not be written to '{plan.Home.Root}': {e.Message.TrimEnd('.')}. What had been written was taken away again.", e);
        }
    }

    private void Put(string path, PlannedFile file, List<PlannedFile> begun)
    {
        // A new file that has come meanwhile is somebody's: opening fails and it stays.
        using var stream = _open(path, file.IsNew ? FileMode.CreateNew : FileMode.Truncate);
        begun.Add(file);
        stream.Write(new UTF8Encoding(false).GetBytes(file.Text));
        stream.Flush();
    }

    private static void Make(string folder, List<string> made)
    {
        if (Directory.Exists(folder)) return;
        Directory.CreateDirectory(folder);
        made.Add(folder);
    }

    private static void TakeBack(PromotionPlan plan, List<PlannedFile> begun, Dictionary<string, byte[]> before, List<string> folders)
    {
        foreach (var file in begun)
        {
            var path = plan.Home.Full(file.Path);
            if (file.IsNew) File.Delete(path);
            else File.WriteAllBytes(path, before[file.Path]);
        }

        foreach (var folder in folders) Directory.Delete(folder);
    }
}

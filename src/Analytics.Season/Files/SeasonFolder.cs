using System.Globalization;
using System.Security.Cryptography;
using Analytics.Season.Cells;

namespace Analytics.Season.Files;

/// <summary>The only place that touches the disk: lists and reads what lies inside one season folder, and nothing outside it.</summary>
internal sealed class SeasonFolder
{
    /// <summary>Largest file read, in bytes: several times a million-row season in one file.</summary>
    public const long LargestFile = 512L * 1024 * 1024;

    private readonly string root;
    private volatile bool hadTrouble;

    private SeasonFolder(string root) => this.root = root;

    /// <summary>Full path of the folder, links in its last part followed.</summary>
    public string Root => new DirectoryInfo(root).ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? root;

    /// <summary>Whether the disk refused something, such as a file that another program holds.</summary>
    public bool HadTrouble => hadTrouble;

    /// <summary>Opens a season folder.</summary>
    /// <exception cref="SeasonException">Missing, not a folder, or not readable.</exception>
    public static SeasonFolder Open(string path)
    {
        if (string.IsNullOrWhiteSpace(path))
            throw new SeasonException("No season folder was given. Name the folder that holds season.json.");
        try
        {
            var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));
            if (File.Exists(full))
                throw new SeasonException($"'{path}' is a file, not a season folder. Name the folder that holds season.json.");
            if (!Directory.Exists(full))
                throw new SeasonException($"There is no season folder '{path}'. Check the spelling, or make one with new-season.");
            var folder = new SeasonFolder(full);
            folder.Entries("");
            return folder;
        }
        catch (InputFault fault)
        {
            throw new SeasonException($"The season folder '{path}' cannot be used: {fault.Reason} {fault.Remedy}", fault);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new SeasonException($"The season folder '{path}' cannot be opened: {error.Message}", error);
        }
    }

    /// <summary>What lies directly in a sub-folder, by name; hidden and temporary files of editors and spreadsheets are left out.</summary>
    /// <param name="folder">Path inside the season, empty for the season folder itself.</param>
    /// <exception cref="InputFault">The sub-folder cannot be listed.</exception>
    public IReadOnlyList<FolderEntry> Entries(string folder)
    {
        try
        {
            return [.. new DirectoryInfo(Path.Combine(root, folder)).EnumerateFileSystemInfos()
                .Where(e => !e.Name.StartsWith('.') && !e.Name.StartsWith("~$", StringComparison.Ordinal))
                .Select(e => new FolderEntry(folder.Length is 0 ? e.Name : $"{folder}/{e.Name}", e.Name, e is DirectoryInfo))
                .OrderBy(e => e.Name, StringComparer.Ordinal)];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            hadTrouble = true;
            throw new InputFault($"the folder cannot be listed: {Plain(error)}.", "Check that it exists and that you may read it.");
        }
    }

    /// <summary>Reads a file whole.</summary>
    /// <exception cref="InputFault">Empty, too large, a link that leaves the season, or not readable.</exception>
    public FileContent Read(string path)
    {
        try
        {
            RefuseLinkOut(path);
            var info = new FileInfo(Path.Combine(root, path));
            if (!info.Exists) throw new InputFault("the file is missing.", "Put it back, or take it out of the season.");
            // Pipes and devices also report 0 bytes, so they are never opened.
            if (info.Length is 0) throw new InputFault("the file is empty.", "Save it again from the spreadsheet, or delete it.");
            if (info.Length > LargestFile)
                throw new InputFault(string.Create(CultureInfo.InvariantCulture, $"the file has {info.Length / 1048576} MB; at most {LargestFile / 1048576} MB are read."), "Split it into several testing days.");
            var bytes = File.ReadAllBytes(info.FullName);
            return new FileContent(path, bytes, Convert.ToHexStringLower(SHA256.HashData(bytes)));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            hadTrouble = true;
            throw new InputFault($"the file cannot be read: {Plain(error)}.", "Close it in other programs and check that you may read it.");
        }
    }

    /// <summary>Throws when a part of the path is a link that leads out of the season folder.</summary>
    public void RefuseLinkOut(string path)
    {
        if (LeadsOut(Path.Combine(root, path), 0))
            throw new InputFault("it is a link that leads outside the season folder.", "Copy the file into the season folder.");
    }

    private bool LeadsOut(string full, int depth)
    {
        var relative = Path.GetRelativePath(root, full);
        if (depth > 40 || relative == ".." || relative.StartsWith($"..{Path.DirectorySeparatorChar}", StringComparison.Ordinal) || Path.IsPathRooted(relative)) return true;
        var walked = root;
        foreach (var part in relative.Split(Path.DirectorySeparatorChar))
        {
            walked = Path.Combine(walked, part);
            var target = new FileInfo(walked).LinkTarget;
            if (target is null) continue;
            if (LeadsOut(Path.GetFullPath(Path.Combine(Path.GetDirectoryName(walked)!, target)), depth + 1)) return true;
        }

        return false;
    }

    /// <summary>The system's message without the path of this machine.</summary>
    private string Plain(Exception error) => CellMarks.Text(SystemMessage.Plain(error, root));
}

/// <summary>A file or folder of the season.</summary>
/// <param name="Path">Path inside the season folder, forward slashes.</param>
/// <param name="Name">Last part of the path.</param>
/// <param name="IsFolder">Whether it is a folder.</param>
internal sealed record FolderEntry(string Path, string Name, bool IsFolder);

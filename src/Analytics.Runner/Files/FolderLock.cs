namespace Analytics.Runner.Files;

/// <summary>Keeps a second batch out of a folder while one is at work. The operating system lets go of it when a process dies.</summary>
internal sealed class FolderLock : IDisposable
{
    private readonly FileStream stream;

    private FolderLock(FileStream stream) => this.stream = stream;

    /// <summary>Takes it.</summary>
    /// <param name="file">The file that stands for it; gone when the lock is.</param>
    /// <param name="what">What is at work, for the message.</param>
    /// <exception cref="NotebookException">Another process has it, or the folder cannot be written.</exception>
    public static FolderLock Take(string file, string what)
    {
        var folder = Path.GetDirectoryName(file)!;
        try
        {
            return new FolderLock(new FileStream(file, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose));
        }
        catch (UnauthorizedAccessException e)
        {
            throw new NotebookException(Fault.Data, $"The results cannot be written to '{folder}': {e.Message}", e);
        }
        catch (IOException e)
        {
            throw new NotebookException(Fault.Usage, $"Another run of {what} is at work in '{folder}'. Wait for it to end, or give another folder with --out.", e);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => stream.Dispose();
}

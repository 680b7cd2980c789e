using System.Text;

namespace Analytics.Runner.Files;

/// <summary>Reads a notebook file.</summary>
internal static class NotebookFile
{
    private const long LargestBytes = 64 << 20;

    public static byte[] Read(string path, string what = "notebook")
    {
        if (Directory.Exists(path))
            throw new NotebookException(Fault.Usage, $"'{path}' is a folder; name the {what} in it.{Near(path)}");
        var file = new FileInfo(path);
        if (!file.Exists)
            throw new NotebookException(Fault.Usage, $"There is no {what} '{path}'.{Near(file.DirectoryName ?? ".")}");
        if (file.Length > LargestBytes)
            throw new NotebookException(Fault.Data, $"'{path}' is larger than 64 MB; clear its outputs first.");
        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new NotebookException(Fault.Data, $"'{path}' cannot be read: {e.Message}", e);
        }
    }

    public static string Decode(byte[] bytes, string name)
    {
        try
        {
            var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes);
            return text.TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException e)
        {
            throw new NotebookException(Fault.Data, $"'{name}' is not UTF-8 text: it is damaged or no notebook.", e);
        }
    }

    private static string Near(string folder)
    {
        if (!Directory.Exists(folder))
            return "";
        var names = Directory.EnumerateFiles(folder, "*.ipynb").Select(Path.GetFileName).Order(StringComparer.Ordinal).Take(20).ToList();
        return names.Count == 0 ? "" : $" The folder holds: {string.Join(", ", names)}.";
    }
}

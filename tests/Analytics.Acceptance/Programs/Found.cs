using System.Diagnostics;

namespace Analytics.Acceptance.Programs;

/// <summary>The programs these tests drive, where this machine has them.</summary>
internal static class Found
{
    private static readonly Lazy<string?> BrowserPath = new(() =>
        Environment.GetEnvironmentVariable("ANALYTICS_CHROMIUM") is { Length: > 0 } given ? given : OnPath("chromium", "chromium-browser", "google-chrome"));

    private static readonly Lazy<string?> NbconvertPath = new(() => OnPath("jupyter-nbconvert"));

    // The one with nbformat need not be the first on the path.
    private static readonly Lazy<string?> NbformatPython = new(() =>
        new[] { "/usr/bin/python3", OnPath("python3") }.FirstOrDefault(p => p is not null && Succeeds(p, "-c", "import nbformat")));

    private static readonly Lazy<bool> KernelIsThere = new(() => NbconvertPath.Value is not null && OnPath("jupyter-kernelspec") is { } specs
        && Running.Run(specs, ["list", "--json"]).Out.Contains("\".net-csharp\"", StringComparison.Ordinal)
        && OnPath("dotnet-interactive") is not null);

    public static string? Chromium => BrowserPath.Value;

    public static string? Nbconvert => KernelIsThere.Value ? NbconvertPath.Value : null;

    public static string? PythonWithNbformat => NbformatPython.Value;

    private static bool Succeeds(string program, params string[] arguments)
        => File.Exists(program) && Running.Run(program, arguments).Code == 0;

    private static string? OnPath(params string[] names)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Append(Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".dotnet", "tools"));
        return names.SelectMany(n => folders.Select(f => Path.Combine(f, n))).FirstOrDefault(File.Exists);
    }
}

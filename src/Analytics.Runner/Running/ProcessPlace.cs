using System.Globalization;

namespace Analytics.Runner.Running;

/// <summary>
/// What a notebook finds around it, the same on every machine: its own folder as the current one, so that its
/// relative paths hold, and the invariant culture. Put back afterwards.
/// </summary>
internal sealed class ProcessPlace : IDisposable
{
    private readonly string folder = Environment.CurrentDirectory;
    private readonly CultureInfo culture = CultureInfo.CurrentCulture;
    private readonly CultureInfo? defaultCulture = CultureInfo.DefaultThreadCurrentCulture;
    private readonly CultureInfo? defaultUiCulture = CultureInfo.DefaultThreadCurrentUICulture;

    public ProcessPlace(string notebookFolder)
    {
        Environment.CurrentDirectory = notebookFolder;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;
    }

    public void Dispose()
    {
        Environment.CurrentDirectory = folder;
        CultureInfo.CurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentCulture = defaultCulture;
        CultureInfo.DefaultThreadCurrentUICulture = defaultUiCulture;
    }
}

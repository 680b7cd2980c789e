using Analytics.Runner.Running;

namespace Analytics.Runner.Files;

/// <summary>Where the results of a run go.</summary>
/// <param name="Page">Full path of the report.</param>
/// <param name="Notebook">Full path of the executed notebook.</param>
public sealed record ResultTarget(string Page, string Notebook)
{
    /// <summary>Names the files after the notebook.</summary>
    /// <param name="request">The run.</param>
    /// <exception cref="NotebookException">The result would overwrite its source.</exception>
    internal static ResultTarget For(RunRequest request) => For(request, Path.GetFileNameWithoutExtension(request.Notebook));

    /// <summary>Names the files otherwise.</summary>
    /// <param name="request">The run.</param>
    /// <param name="stem">File name without its ending.</param>
    /// <exception cref="NotebookException">The result would overwrite its source.</exception>
    internal static ResultTarget For(RunRequest request, string stem)
    {
        var folder = Path.GetFullPath(request.OutFolder);
        var target = new ResultTarget(Path.Combine(folder, stem + ".html"), Path.Combine(folder, stem + ".ipynb"));
        return string.Equals(target.Notebook, Path.GetFullPath(request.Notebook), StringComparison.Ordinal)
            ? throw new NotebookException(Fault.Usage, $"The executed copy would overwrite '{request.Notebook}'; give another folder with --out.")
            : target;
    }
}

/// <summary>The bytes of the two results.</summary>
/// <param name="Page">The report.</param>
/// <param name="Notebook">The executed notebook.</param>
public sealed record ResultContent(byte[] Page, byte[] Notebook);

using System.Globalization;
using Analytics.Runner.Running;

namespace Analytics.Runner.Files;

/// <summary>Where the results of a run go.</summary>
/// <param name="Page">Full path of the report.</param>
/// <param name="Notebook">Full path of the executed notebook.</param>
public sealed record ResultTarget(string Page, string Notebook)
{
    /// <summary>Full path of a table a cell put out: named as the report, from the second on with a number.</summary>
    /// <param name="index">Its place, from 0.</param>
    public string Table(int index)
        => Path.Combine(Path.GetDirectoryName(Page)!, Path.GetFileNameWithoutExtension(Page) + (index == 0 ? ".csv" : string.Create(CultureInfo.InvariantCulture, $"-{index + 1}.csv")));

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

/// <summary>The bytes of the results.</summary>
/// <param name="Page">The report.</param>
/// <param name="Notebook">The executed notebook.</param>
public sealed record ResultContent(byte[] Page, byte[] Notebook)
{
    /// <summary>Tables that cells put out as <c>text/csv</c>, in order; mostly none.</summary>
    public IReadOnlyList<byte[]> Tables { get; init; } = [];
}

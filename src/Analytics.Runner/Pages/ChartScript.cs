namespace Analytics.Runner.Pages;

/// <summary>The chart library a page carries, once, if any output asks for a chart.</summary>
public sealed class ChartScript
{
    private readonly Lazy<(string Text, string Packed)> loaded;

    /// <summary>Names a chart library.</summary>
    /// <param name="read">Reads its source, packed by gzip: UTF-8, one classic script that defines <c>Plotly</c>.</param>
    /// <param name="notice">Name, version and licence, shown in the page's source.</param>
    public ChartScript(Func<byte[]> read, string notice)
    {
        ArgumentNullException.ThrowIfNull(read);
        Notice = notice;
        loaded = new(() =>
        {
            var packed = read();
            return (PackedText.Unzip(packed), PackedText.Encode(packed));
        });
    }

    /// <summary>Name, version and licence.</summary>
    public string Notice { get; }

    internal string Text => loaded.Value.Text;

    internal string Packed => loaded.Value.Packed;

    /// <summary>Reads the library now, so that no page waits for it.</summary>
    public void Prepare() => _ = loaded.Value;
}

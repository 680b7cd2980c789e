using System.Net;
using System.Text.RegularExpressions;
using Analytics.Runner.Outputs;
using Analytics.Runner.Pages;
using Analytics.Runner.Settings;

namespace Analytics.Runner.Running;

/// <summary>
/// Takes out of texts where things lie on the disk of whoever makes a report: messages of failures and console text
/// often hold full paths, and a report travels.
/// </summary>
internal sealed partial class NeutralPlaces
{
    private readonly Dictionary<string, string> words = new(StringComparer.Ordinal);
    private readonly string[] signs;
    private readonly Lazy<Regex> known;

    private NeutralPlaces(string notebookFolder, IEnumerable<string> inputs)
    {
        foreach (var input in inputs)
        {
            AddWithParents(Path.GetFullPath(input, notebookFolder), LastName(input));
            if (!Path.IsPathRooted(input))
                AddWithParents(input, LastName(input));
        }

        AddWithParents(notebookFolder, "(notebook folder)");
        AddWithParents(AppContext.BaseDirectory, "(program folder)");
        AddWithParents(Environment.CurrentDirectory, "(folder)");
        AddWithParents(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), "(home folder)");
        // The longest first: of a folder and its parent the folder is meant. A name that only begins alike is another.
        var longestFirst = words.Keys.OrderByDescending(k => k.Length).ThenBy(k => k, StringComparer.Ordinal).Select(Regex.Escape);
        known = new(() => new Regex($@"(?<![\w])(?<up>(?:\.\.?[/\\])*)(?<place>{string.Join('|', longestFirst)})(?![\w-])", RegexOptions.CultureInvariant));
        signs = [.. words.Keys.Where(k => !words.Keys.Any(o => o.Length < k.Length && k.StartsWith(o, StringComparison.Ordinal))), "/home/", "/Users/", "\\Users\\"];
    }

    /// <summary>The places that matter to a run.</summary>
    /// <param name="notebook">The notebook file.</param>
    /// <param name="settings">Its settings; those that are paths name its inputs.</param>
    public static NeutralPlaces Of(string notebook, IEnumerable<Setting> settings) => new(
        Path.GetDirectoryName(Path.GetFullPath(notebook))!,
        settings.Where(SettingText.IsPath).SelectMany(s => SettingValue.Of(s).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)).Where(p => !p.Contains('\0', StringComparison.Ordinal)));

    /// <summary>The text with every known place, and every user's folder, in neutral words.</summary>
    public string Neutral(string text)
    {
        if (!Array.Exists(signs, s => text.Contains(s, StringComparison.Ordinal)))
            return text;
        return UserFolder().Replace(known.Value.Replace(text, m => words[m.Groups["place"].Value]), "(home folder)");
    }

    /// <summary>The output with its texts so.</summary>
    public CellOutput Neutral(CellOutput output) => output switch
    {
        StreamOutput stream => stream with { Text = Neutral(stream.Text) },
        DisplayOutput display => display with { Forms = [.. display.Forms.Select(f => f with { Content = Neutral(f.Content) })] },
        ErrorOutput { Failure: var failure } => new ErrorOutput(failure with { Message = Neutral(failure.Message), Trace = [.. failure.Trace.Select(Neutral)] }),
        _ => output,
    };

    private static string LastName(string path) => path.Split(['/', '\\'], StringSplitOptions.RemoveEmptyEntries) is [.., var last] ? last : path;

    private void AddWithParents(string path, string word)
    {
        path = path.TrimEnd('/', '\\');
        while (NamesIn(path) > 1)
        {
            // As it is, as it stands in JSON, and as it stands in HTML.
            foreach (var written in new[] { path, path.Replace('\\', '/'), path.Replace("\\", "\\\\", StringComparison.Ordinal), WebUtility.HtmlEncode(path) })
                words.TryAdd(written, word);
            path = path[..path.LastIndexOfAny(['/', '\\'])].TrimEnd('/', '\\');
            word = "(folder)";
        }
    }

    // A path of one name, such as /tmp or ../data-demo, tells nothing about anybody.
    private static int NamesIn(string path) => path.Split('/', '\\').Count(n => n.Length > 0 && n.Trim('.').Length > 0 && !n.EndsWith(':'));

    [GeneratedRegex("""(?<![\w.])(?:\.\.?[/\\])*(?:/home/|/Users/|[A-Za-z]:(?:\\+|/)Users(?:\\+|/)|home/(?<=\.\./home/)|Users/(?<=\.\./Users/))[^/\\\s"'<>:;,)]+""")]
    private static partial Regex UserFolder();
}

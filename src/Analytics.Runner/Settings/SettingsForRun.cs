using System.Text;
using Analytics.Runner.Documents;

namespace Analytics.Runner.Settings;

/// <summary>Settings given for one run: checked against the notebook and written into a cell of their own.</summary>
public static class SettingsForRun
{
    private const string InjectedId = "settings-for-this-run";

    /// <summary>
    /// Puts the given settings into the notebook, right after its settings cell, and takes out those of an
    /// earlier run.
    /// </summary>
    /// <param name="document">The notebook; changed.</param>
    /// <param name="name">What to call it in messages.</param>
    /// <param name="given">Name and value as text.</param>
    /// <returns>Every setting of the notebook with the value this run uses.</returns>
    /// <exception cref="NotebookException">A name is unknown or a value does not fit its type.</exception>
    public static IReadOnlyList<Setting> Apply(NotebookDocument document, string name, IReadOnlyList<KeyValuePair<string, string>> given)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentNullException.ThrowIfNull(given);
        foreach (var old in document.Cells.Where(c => c.HasTag(CellTag.InjectedSettings)).ToList())
            document.Remove(old);

        var cell = SettingsCell.Find(document, name);
        var known = cell is null ? [] : SettingsCell.Read(cell.Source);
        var chosen = Once(given.Select(g => Fit(g, known, name)), name);
        if (cell is not null && chosen.Count > 0)
            document.InsertAfter(NotebookCell.Code(InjectedId, Declare(known, chosen), CellTag.InjectedSettings), cell);
        return [.. known.Select(s => chosen.GetValueOrDefault(s.Name, s))];
    }

    private static Setting Fit(KeyValuePair<string, string> given, IReadOnlyList<Setting> known, string name)
    {
        var setting = known.FirstOrDefault(s => s.Name == given.Key) ?? throw Unknown(given.Key, known, name);
        var literal = setting.Type.ToLiteral(given.Value)
            ?? throw new NotebookException(Fault.Usage, $"Setting '{setting.Name}' of '{name}' is {setting.Type.Expects} ({setting.Type.CodeName}), not '{given.Value}'.");
        return setting with { Literal = literal };
    }

    private static NotebookException Unknown(string key, IReadOnlyList<Setting> known, string name)
    {
        if (known.Count == 0)
            return new NotebookException(Fault.Usage, $"'{name}' has no settings, so '{key}' cannot be set. Tag a code cell '{CellTag.Settings}' and declare it there.");
        var guess = NearestName.To(key, known.Select(s => s.Name));
        var list = string.Join("", known.Select(s => $"\n  {s.Name} ({s.Type.CodeName}), now {s.Literal}{(s.Comment.Length > 0 ? ": " + s.Comment : "")}"));
        return new NotebookException(Fault.Usage, $"'{name}' has no setting '{key}'.{(guess is null ? "" : $" Did you mean '{guess}'?")} It has:{list}");
    }

    private static Dictionary<string, Setting> Once(IEnumerable<Setting> settings, string name)
    {
        var map = new Dictionary<string, Setting>(StringComparer.Ordinal);
        foreach (var setting in settings)
        {
            if (!map.TryAdd(setting.Name, setting))
                throw new NotebookException(Fault.Usage, $"Setting '{setting.Name}' of '{name}' is given twice; give it once.");
        }

        return map;
    }

    private static string Declare(IReadOnlyList<Setting> known, Dictionary<string, Setting> chosen)
    {
        var code = new StringBuilder("// Settings given for this run.");
        foreach (var setting in known.Where(s => chosen.ContainsKey(s.Name)))
            code.Append('\n').Append(chosen[setting.Name]);
        return code.ToString();
    }
}

using System.Text.Json;
using Analytics.Quantities;
using Analytics.Season.Cells;

namespace Analytics.Season.Settings;

/// <summary>An object of season.json: typed values, faults in words, and which keys nobody asked for.</summary>
internal sealed class SettingsObject(string path, JsonElement element, List<string> faults, ICollection<InputNote> notes)
{
    private readonly HashSet<string> read = new(StringComparer.Ordinal);

    /// <summary>What is wrong, one sentence each.</summary>
    public List<string> Faults => faults;

    /// <summary>Whether it stands in the file as an object.</summary>
    public bool IsGiven => element.ValueKind is JsonValueKind.Object;

    /// <summary>Whether a key has a value.</summary>
    public bool Has(string key) => Get(key) is not null;

    /// <summary>Whether a quantity has a value in any unit.</summary>
    public bool Has(string name, IEnumerable<Unit> units) => units.Any(u => Has($"{name}_{u.Symbol}"));

    /// <summary>Text that must be there.</summary>
    public string Text(string key)
    {
        if (Get(key) is not { } value) return Fault(key, "is missing; write it as text in quotes", "");
        if (value.ValueKind is JsonValueKind.String && !string.IsNullOrWhiteSpace(value.GetString())) return value.GetString()!.Trim();
        return Fault(key, $"must be text in quotes, not empty; got {Shown(value)}", "");
    }

    /// <summary>A date that must be there.</summary>
    public DateOnly Date(string key)
    {
        if (Get(key) is not { } value) return Fault(key, "is missing; write a date like \"2026-01-05\"", DateOnly.MinValue);
        return value.ValueKind is JsonValueKind.String && DateText.Read(value.GetString()!) is { } date
            ? date
            : Fault(key, $"must be a date like \"2026-01-05\"; got {Shown(value)}", DateOnly.MinValue);
    }

    /// <summary>One of a few words.</summary>
    public string Choice(string key, string standard, params string[] allowed)
    {
        if (Get(key) is not { } value) return standard;
        var text = value.ValueKind is JsonValueKind.String ? value.GetString()!.Trim() : null;
        return allowed.FirstOrDefault(a => string.Equals(a, text, StringComparison.OrdinalIgnoreCase))
            ?? Fault(key, $"must be one of {string.Join(", ", allowed)}; got {Shown(value)}", standard);
    }

    /// <summary>A word of a set; null when not given.</summary>
    public T? Word<T>(string key, WordSet<T> words) where T : struct
    {
        if (Get(key) is not { } value) return null;
        var meaning = value.ValueKind is JsonValueKind.String ? words.Find(value.GetString()!.Trim()) : null;
        return meaning ?? Fault<T?>(key, $"must be one of {words.Accepted}; got {Shown(value)}", null);
    }

    /// <summary>A number within limits; null when not given.</summary>
    public double? Number(string key, double low, double high)
        => Get(key) is not { } value ? null
            : Finite(value) is { } number && number >= low && number <= high ? number
            : Fault<double?>(key, $"must be a number from {CellText.Number(low)} to {CellText.Number(high)}; got {Shown(value)}", null);

    /// <summary>A length whose unit stands in the key, <c>length_m</c> or <c>length_ft</c>; null when not given.</summary>
    /// <param name="name">Key without unit.</param>
    /// <param name="units">Units accepted.</param>
    /// <param name="low">Lowest allowed, m.</param>
    /// <param name="high">Highest allowed, m.</param>
    public (Length Length, Unit Unit)? Length(string name, IReadOnlyList<Unit> units, double low, double high)
    {
        var given = units.Where(u => Has($"{name}_{u.Symbol}")).ToList();
        if (given.Count is 0) return null;
        var (unit, key) = (given[0], $"{name}_{given[0].Symbol}");
        if (given.Count > 1) return Fault<(Length, Unit)?>(key, $"and '{path}{name}_{given[1].Symbol}' are both given; keep one", null);
        if (Finite(Get(key)!.Value) is not { } number || number * unit.ToSi >= low && number * unit.ToSi <= high)
            return Number(key, low / unit.ToSi, high / unit.ToSi) is { } value ? (Quantities.Length.FromMetres(value * unit.ToSi), unit) : null;
        var meant = units.FirstOrDefault(u => number * u.ToSi >= low && number * u.ToSi <= high);
        return Fault<(Length, Unit)?>(key, $"must be from {CellText.Limit(low / unit.ToSi, isLow: true)} to {CellText.Limit(high / unit.ToSi, isLow: false)} {unit.Symbol}; got {CellText.Number(number)}{(meant is null ? "" : $". It looks like {meant.Symbol}; if it is, name the key {name}_{meant.Symbol}")}", null);
    }

    /// <summary>All keys not asked for so far, each a word of a set.</summary>
    /// <param name="words">The set.</param>
    /// <param name="hints">Words a misspelt one may have been meant for.</param>
    public List<(string Key, T Meaning)> OtherWords<T>(WordSet<T> words, IReadOnlyList<string> hints) where T : struct
    {
        var meanings = new List<(string, T)>();
        foreach (var key in Keys().Where(k => !read.Contains(k)).ToList())
        {
            var value = Get(key);
            var text = value is { ValueKind: JsonValueKind.String } cell ? cell.GetString()!.Trim() : null;
            if (text is not null && words.Find(text) is { } meaning) meanings.Add((key, meaning));
            else if (text is not null && NearWord.Of(Words.Normal(text), hints) is { } near) Fault(key, $"is the {words.What} '{CellText.Show(text)}', which is not known; did you mean {near}?", 0);
            else Fault(key, $"must be a {words.What}, one of {words.Accepted}; got {(value is { } other ? Shown(other) : "null")}", 0);
        }

        return meanings;
    }

    /// <summary>All keys not asked for so far, each a number above 0.</summary>
    public SortedDictionary<string, double> OtherNumbers()
    {
        var numbers = new SortedDictionary<string, double>(StringComparer.Ordinal);
        foreach (var key in Keys().Where(k => !read.Contains(k)).ToList())
        {
            if (Finite(Get(key)!.Value) is { } number && number > 0) numbers[key] = number;
            else Fault(key, $"must be a number above 0; got {Shown(Get(key)!.Value)}", 0);
        }

        return numbers;
    }

    /// <summary>An inner object; empty when not given.</summary>
    public SettingsObject Object(string key)
    {
        var value = Get(key);
        if (value is { ValueKind: not JsonValueKind.Object } other) Fault(key, $"must be an object {{ ... }}; got {Shown(other)}", 0);
        return new SettingsObject($"{path}{key}.", value is { ValueKind: JsonValueKind.Object } inner ? inner : default, faults, notes);
    }

    /// <summary>The elements of a list; empty when not given.</summary>
    public IReadOnlyList<JsonElement> Array(string key)
    {
        if (Get(key) is not { } value) return [];
        return value.ValueKind is JsonValueKind.Array ? [.. value.EnumerateArray()] : Fault<IReadOnlyList<JsonElement>>(key, $"must be a list [ ... ]; got {Shown(value)}", []);
    }

    /// <summary>Remarks on keys nobody asked for, and on keys given twice.</summary>
    public void NoteUnread()
    {
        foreach (var key in Keys().Where(k => !read.Contains(k)).Distinct())
        {
            var near = NearWord.Of(key, read);
            notes.Add(new InputNote(SettingsReader.FileName, $"The key '{path}{CellText.Show(key)}' is not known and was not read{(near is null ? "." : $"; did you mean {near}?")}"));
        }
    }

    private IEnumerable<string> Keys() => element.ValueKind is JsonValueKind.Object ? element.EnumerateObject().Select(p => p.Name) : [];

    private JsonElement? Get(string key)
    {
        if (read.Add(key) && Keys().Count(k => k == key) > 1) Fault(key, "is given more than once; keep one", 0);
        return element.ValueKind is JsonValueKind.Object && element.TryGetProperty(key, out var value) && value.ValueKind != JsonValueKind.Null ? value : null;
    }

    private T Fault<T>(string key, string what, T standard)
    {
        faults.Add($"'{path}{CellText.Show(key)}' {what}{(what.EndsWith('?') ? "" : ".")}");
        return standard;
    }

    /// <summary>A finite number; null when it is none.</summary>
    public static double? Finite(JsonElement value) => value.ValueKind is JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number) ? number : null;

    private static string Shown(JsonElement value) => CellText.Show(value.GetRawText());
}

using System.Globalization;

namespace Analytics.Simulation.Commands;

/// <summary>Options given as <c>--name value</c>.</summary>
public sealed class Arguments
{
    private readonly Dictionary<string, string> _values = new(StringComparer.Ordinal);

    public Arguments(IReadOnlyList<string> arguments)
    {
        for (var i = 0; i < arguments.Count; i += 2)
        {
            if (!arguments[i].StartsWith("--", StringComparison.Ordinal) || i + 1 == arguments.Count)
                throw new ArgumentException($"'{arguments[i]}': options are given as --name value.");
            _values[arguments[i]] = arguments[i + 1];
        }
    }

    public string Required(string name)
        => _values.TryGetValue(name, out var value) ? value : throw new ArgumentException($"{name} is missing.");

    public string Text(string name, string otherwise) => _values.GetValueOrDefault(name, otherwise);

    public long Number(string name, long otherwise)
    {
        if (!_values.TryGetValue(name, out var text)) return otherwise;
        return long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            ? value
            : throw new ArgumentException($"{name} {text}: expected a whole number, 0 or more.");
    }
}

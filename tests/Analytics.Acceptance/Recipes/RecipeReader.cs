using System.Text.RegularExpressions;

namespace Analytics.Acceptance.Recipes;

/// <summary>
/// Reads the fenced blocks of a recipe page: <c>diff</c> blocks are edits, <c>sh</c> blocks commands, any other is a new file and stands under a line that ends
/// with its path in backticks and a colon.
/// </summary>
internal static partial class RecipeReader
{
    public static Recipe Read(string kind, string page)
    {
        var lines = page.ReplaceLineEndings("\n").Split('\n');
        List<RecipePart> parts = [];
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal)) continue;
            var end = Array.FindIndex(lines, i + 1, l => l == "```");
            if (end < 0) throw new FormatException($"{kind}.md, line {i + 1}: the block is not closed.");
            parts.AddRange(Parts(kind, lines, i, [.. lines[(i + 1)..end]]));
            i = end;
        }

        return new(kind, parts);
    }

    private static IEnumerable<RecipePart> Parts(string kind, string[] lines, int fence, string[] block)
    {
        var text = string.Join('\n', block) + "\n";
        switch (lines[fence][3..])
        {
            case "diff":
                return [new Edit(fence + 1, text)];
            case "sh":
                return block.Select((line, n) => RecipeCommand.Parse(fence + 2 + n, line));
            default:
                var before = lines[..fence].LastOrDefault(l => l.Length > 0) ?? "";
                return PathBefore().Match(before) is { Success: true } path ? [new NewFile(fence + 1, path.Groups[1].Value, text)]
                    : throw new FormatException($"{kind}.md, line {fence + 1}: which file is this block? Write its path in backticks and a colon on the line above.");
        }
    }

    [GeneratedRegex(@"`([\w.\-]+(?:/[\w.\-]+)+)`:$")]
    private static partial Regex PathBefore();
}

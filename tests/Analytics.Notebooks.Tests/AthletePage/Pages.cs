using System.Text.RegularExpressions;
using Analytics.Notebooks.AthletePage;
using Analytics.Notebooks.Blocks;
using Analytics.Season;

namespace Analytics.Notebooks.Tests.AthletePage;

/// <summary>Pages for the tests, and all they say.</summary>
internal static partial class Pages
{
    private static readonly Lazy<SeasonData> DemoSeason = new(() => SeasonReader.Read(Path.Combine(Root(), "data-demo")));

    public static SeasonData Demo => DemoSeason.Value;

    public static IReadOnlyList<Block> Blocks(AthletePageReport page) =>
    [
        page.Head(), page.Answers(), page.WhereYouStand(), page.YourChange(), page.NextLoads(), page.BeforeYouLift(), page.HowToRead(), page.LeftOut(), page.Provenance(),
    ];

    public static string Html(AthletePageReport page) => string.Concat(Blocks(page).Select(b => b.ToHtml()));

    public static string Text(AthletePageReport page) => string.Join("\n", Blocks(page).Select(b => b.ToText()));

    /// <summary>Both forms, as a page and an executed notebook hold them, without the style sheets; digests are no values.</summary>
    public static string Everything(AthletePageReport page) => Digest().Replace(Style().Replace(Html(page), ""), "") + Digest().Replace(Text(page), "");

    /// <summary>Whether a name, identifier or number stands in a text on its own.</summary>
    public static bool Holds(string text, string word) => Regex.IsMatch(text, @"(?<![\w.])" + Regex.Escape(word) + @"(?![\w]|\.\d)", RegexOptions.IgnoreCase);

    public static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Analytics.sln"))) folder = folder.Parent!;
        return folder.FullName;
    }

    [GeneratedRegex("<style.*?</style>", RegexOptions.Singleline)]
    private static partial Regex Style();

    [GeneratedRegex("[0-9a-f]{40,64}")]
    private static partial Regex Digest();
}

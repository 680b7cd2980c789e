using System.Globalization;

namespace Analytics.Simulation.SeasonStudy;

/// <summary>docs/season-study.md: a head and the sections one after the other.</summary>
public static class SeasonStudyDocument
{
    /// <summary>The document.</summary>
    /// <param name="sections">Sections that have counted.</param>
    /// <param name="seasons">Seasons of each kind.</param>
    /// <param name="seed">Seed of the first.</param>
    public static string Of(IReadOnlyList<IStudySection> sections, int seasons, ulong seed)
        => string.Join("\n", [Head(seasons, seed), .. sections.Select(s => s.Write())]);

    private static string Head(int seasons, ulong seed) => string.Create(CultureInfo.InvariantCulture,
        $"""
        # What the season report's conclusions are worth

        The season of the invented club is made anew {seasons} times with other athletes, other luck and other typing errors, read from files and sent
        through the season's own methods ([season](methods/season.md)). What is concluded is held against the truth. Written by one command; the same seed
        gives the same figures:

            dotnet run -c Release --project tests/Analytics.Simulation -- season-study --seasons {seasons} --seed {seed} --out docs/season-study.md

        Figures in brackets are Monte Carlo standard errors, the season taken as the unit. "low" and "high" mark a coverage outside 93 to 97 % by more than two of them.

        """);
}

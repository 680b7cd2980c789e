using Analytics.Season.Cells;

namespace Analytics.Season.Joining;

/// <summary>What makes seasons unfit to be joined: a wrong order, and the same day of work in two of them, which would count twice.</summary>
internal static class JoinChecks
{
    /// <summary>Throws when the seasons cannot be joined.</summary>
    public static void Refuse(IReadOnlyList<SeasonPart> parts, JoinedSquad squad)
    {
        for (var i = 1; i < parts.Count; i++) RefuseOrder(parts[i - 1], parts[i]);
        RefuseDays(parts);
        RefuseSessions(parts, squad);
    }

    private static void RefuseOrder(SeasonPart before, SeasonPart after)
    {
        DateOnly first = before.Data.Settings.From, second = after.Data.Settings.From;
        if (first < second) return;
        throw new SeasonException($"The seasons are not in order: '{Name(before)}' begins on {DateText.Iso(first)}, '{Name(after)}' on {DateText.Iso(second)}. Name earlier seasons oldest first, and the latest as the season itself.");
    }

    // Which of two sheets of a day is right cannot be told; taking both would count attempts twice.
    private static void RefuseDays(IReadOnlyList<SeasonPart> parts)
    {
        var twice = parts.SelectMany(p => p.Data.Days.Where(d => d.Athletes.Count > 0).Select(d => (Part: p, d.Date))).GroupBy(d => d.Date).Where(d => d.Count() > 1).OrderBy(d => d.Key).ToList();
        if (twice is not [var first, ..]) return;
        var more = twice.Count > 1 ? FormattableString.Invariant($", and {twice.Count - 1} more") : "";
        throw new SeasonException($"The testing day {DateText.Iso(first.Key)}{more} lies in two seasons, '{Name(first.First().Part)}' and '{Name(first.Last().Part)}', and would count twice. Keep it in one of the two folders.");
    }

    private static void RefuseSessions(IReadOnlyList<SeasonPart> parts, JoinedSquad squad)
    {
        var seen = new Dictionary<(string, DateOnly), SeasonPart>();
        foreach (var part in parts)
        {
            foreach (var session in part.Data.Sessions)
            {
                if (seen.TryAdd((squad.IdOf(session.AthleteId), session.Date), part) || seen[(squad.IdOf(session.AthleteId), session.Date)] == part) continue;
                throw new SeasonException($"Training of the same athlete on {DateText.Iso(session.Date)} stands in the sessions of two seasons, '{Name(seen[(squad.IdOf(session.AthleteId), session.Date)])}' and '{Name(part)}', and would count twice. Keep these rows in one of the two folders.");
            }
        }
    }

    private static string Name(SeasonPart part) => CellText.Show(part.Name);
}

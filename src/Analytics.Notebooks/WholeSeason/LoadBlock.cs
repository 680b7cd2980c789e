using System.Globalization;
using Analytics.Metrics.Load;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;
using Analytics.Notebooks.TestingDay;
using Analytics.Season;

namespace Analytics.Notebooks.WholeSeason;

/// <summary>What training was done, week by week and by group, and who did more against who changed: description only.</summary>
internal static class LoadBlock
{
    public static Block Of(SeasonContext season)
    {
        if (season.Trained is not { } trained)
            return new Section("What training was done", "No session is written down between two testing days. Add sessions.csv with date, athlete_id, minutes and session_rpe to see load beside change.");
        var done = trained.Doses.Where(d => d.Sessions > 0).ToList();
        return new Section("What training was done",
            $"From {season.Day(trained.Before.Date)} to {season.Day(trained.After.Date)}, as far as it was written down: {Words.PlayersOf(done.Count, season.Squad.Count)} with sessions.{Elsewhere(season, done)}",
            Weeks(season, done),
            Groups(season, done),
            DoseBlock.Of(season, trained),
            new Note("Means of what was written down, over the whole weeks that could be summed; no error of a rating, a count or a sheet is known, so they have no interval."),
            new Note(LoadCautions.NoPredictor));
    }

    private static string Elsewhere(SeasonContext season, IReadOnlyList<TrainingDose> done)
    {
        int all = season.Data.Sessions.Count, counted = done.Sum(d => d.Sessions);
        return counted == all ? "" : string.Create(CultureInfo.InvariantCulture, $" {counted} of the season's {all} sessions; the others lie outside these days or are of players no longer in the squad.");
    }

    private static Block Weeks(SeasonContext season, IReadOnlyList<TrainingDose> done)
    {
        var weeks = done.SelectMany(d => d.Weeks.Where(w => w.Sessions > 0).Select(w => (d.AthleteId, Week: w))).ToList();
        if (weeks.Count == 0) return new Note("No whole week, Monday to Sunday, lies between the two testing days, so there is no load of a week.");
        List<TrendPanel> panels = [];
        Add("session load", "AU", 0, w => w.Load.TotalAu);
        Add("monotony", "", 1, w => w.Load.Monotony);
        Add("jump contacts", "", 0, w => w.Contacts.Total);
        return panels.Count == 0 ? new Note("No week can be summed: ratings, minutes or contacts are missing in every one.") : new TrendPlot(panels);

        void Add(string what, string unit, int decimals, Func<Metrics.Load.TrainingWeek, double?> value)
        {
            var known = weeks.Select(w => (w.AthleteId, w.Week.Monday, Value: value(w.Week))).Where(w => w.Value is not null).ToList();
            if (known.Count == 0) return;
            panels.Add(new TrendPanel
            {
                Title = $"{Words.Capital(what)} of a week",
                // Weeks that cannot be summed are in no mean; how many that are is said here.
                TitleNote = known.Count == weeks.Count ? "mean of the players" : string.Create(CultureInfo.InvariantCulture, $"mean of the players, {known.Count} of {weeks.Count} weeks of players"),
                Axis = new Axis(what, unit, decimals),
                Lines = [new TrendLine("Squad", [.. known.GroupBy(k => k.Monday).OrderBy(g => g.Key).Select(g => new TrendPoint(g.Key, g.Average(k => k.Value!.Value)))])],
                Behind = [.. known.GroupBy(k => k.AthleteId).OrderBy(g => g.Key, StringComparer.Ordinal).Select(g => (IReadOnlyList<TrendPoint>)[.. g.OrderBy(k => k.Monday).Select(k => new TrendPoint(k.Monday, k.Value!.Value))])],
            });
        }
    }

    private static DataTable Groups(SeasonContext season, IReadOnlyList<TrainingDose> done)
    {
        var groupOf = season.Squad.ToDictionary(a => a.Id, a => a.Group, StringComparer.Ordinal);
        var mass = season.Data.Settings.MassUnit;
        var perKilogram = mass == "lb" ? 1 / Quantities.UnitFactors.KilogramsPerPound : 1;
        List<(string Group, List<TrainingDose> Doses)> rows = [("Squad", [.. done]), .. season.Groups.Select(g => (g, done.Where(d => groupOf.GetValueOrDefault(d.AthleteId) == g).ToList()))];
        return DataTable.Of("Training of a player and week, mean of the group", rows.Where(r => r.Doses.Count > 0), t => t
            .Text("Group", r => new Cell(r.Group, r.Doses.Count == 1 ? "1 player" : $"{r.Doses.Count} players"))
            .Number("Sessions", "", 1, r => Mean(r.Doses, d => d.WeeksCovered > 0 ? (double)d.Weeks.Sum(w => w.Sessions) / d.WeeksCovered : null))
            .Number("Rated", "%", 0, r => 100 * Mean(r.Doses, d => d.ShareRated))
            .Number("Session load", "AU", 0, r => Mean(r.Doses, d => d.Weeks.Where(w => w.Sessions > 0).Average(w => w.Load.TotalAu)))
            .Number("Monotony", "", 2, r => Mean(r.Doses, d => d.MeanMonotony))
            .Number("Strain", "AU", 0, r => Mean(r.Doses, d => d.MeanStrainAu))
            .Number("Jump contacts", "", 0, r => Mean(r.Doses, d => d.Weeks.Where(w => w.Sessions > 0).Average(w => (double?)w.Contacts.Total)))
            .Number("Volume-load", mass, 0, r => Mean(r.Doses, d => d.MeanVolumeKilograms * perKilogram)));
    }

    private static double? Mean(IEnumerable<TrainingDose> doses, Func<TrainingDose, double?> value) => doses.Average(value);
}

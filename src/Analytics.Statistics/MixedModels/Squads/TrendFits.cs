using System.Globalization;

namespace Analytics.Statistics.MixedModels.Squads;

/// <summary>The models behind a <see cref="SquadTrend"/>.</summary>
internal sealed class TrendFits
{
    private const string Day = "day";
    private const string Cell = "cell";
    private const string Group = "group";

    private readonly IReadOnlyList<TrendRow> _rows;
    private readonly string _name;
    private readonly double _level;
    private readonly double[] _day;
    private readonly List<string> _remarks = [];
    private bool _slopes;

    public TrendFits(IReadOnlyList<TrendRow> rows, string name, double level)
    {
        ArgumentNullException.ThrowIfNull(rows);
        Require.Sample([.. rows.Select(r => r.Value)], 1, nameof(rows));
        Require.Sample([.. rows.Select(r => r.Day)], 1, "day");
        foreach (var athlete in rows.GroupBy(r => r.Athlete))
        {
            var groups = athlete.Select(r => r.Group).Distinct().ToList();
            if (groups.Count > 1)
                throw new ArgumentException($"{athlete.Key} is in {groups.Count} groups ({string.Join(", ", groups)}); an athlete needs one group in all rows.", nameof(rows));
        }

        (_rows, _name, _level) = (rows, name, level);
        _day = [.. rows.Select(r => r.Day)];
        var often = rows.GroupBy(r => r.Athlete).Count(a => a.Select(r => r.Day).Distinct().Count() >= SquadTrend.DaysForSlope);
        _slopes = often >= SquadTrend.AthletesForSlope;
    }

    public SquadTrend Result()
    {
        var squad = Means(_ => null);
        var groups = Means(r => r.Group);
        List<TrendSlope> slopes = [.. Line(), .. Lines()];
        return new()
        {
            ResponseName = _name, Squad = squad, Groups = groups, Slopes = slopes, HasRandomSlopes = _slopes && squad.Count > 0,
            Athletes = _rows.Select(r => r.Athlete).Distinct().Count(), Rows = _rows.Count, Remarks = [.. _remarks.Distinct()],
        };
    }

    private IReadOnlyList<TrendMean> Means(Func<TrendRow, string?> group)
    {
        var keys = _rows.Select(r => (Group: group(r), r.Day)).ToList();
        // Labels sort as the pair of group and day does.
        var cells = keys.Distinct().OrderBy(k => k.Group, StringComparer.Ordinal).ThenBy(k => k.Day).ToList();
        var labels = cells.Select((cell, i) => (cell, Text: i.ToString("D9", CultureInfo.InvariantCulture))).ToDictionary(l => l.cell, l => l.Text);
        var design = Start().WithoutIntercept().Factor(Cell, [.. keys.Select(k => labels[k])]);
        if (Fit(design, "means by day") is not { } model) return [];
        var first = cells.GroupBy(c => c.Group ?? string.Empty).ToDictionary(g => g.Key, g => g.First());
        var own = _rows.GroupBy(r => group(r) ?? string.Empty).ToDictionary(g => g.Key, g => OwnLevels.Of(model, [.. g.Select(r => r.Athlete).Distinct()]));
        var tested = _rows.GroupBy(r => (group(r), r.Day)).ToDictionary(g => g.Key, g => g.Select(r => r.Athlete).Distinct().Count());
        return
        [
            .. cells.Select(cell =>
            {
                var (start, name) = (first[cell.Group ?? string.Empty], Name(cell.Group, cell.Day));
                var (point, from) = (Point(labels[cell], cell.Day), Point(labels[start], start.Day));
                var (since, levels) = ($"{name} since {Number(start.Day)}", own[cell.Group ?? string.Empty]);
                return new TrendMean(
                    cell.Group, cell.Day, tested[cell], model.MeanAt(name, point, _level), cell == start ? null : model.Difference(since, point, from, _level))
                {
                    Own = new(levels.MeanAt(name, point, _level), cell == start ? null : levels.Difference(since, point, from, _level), levels.At(point)),
                };
            }),
        ];
    }

    private IEnumerable<TrendSlope> Line()
    {
        if (_day.Distinct().Count() < 2) return [];
        var model = Fit(Start().Covariate(Day, _day), "straight line");
        return model is null ? [] : [new(null, model.Contrast("squad, change a day", [0, 1], level: _level))];
    }

    private IEnumerable<TrendSlope> Lines()
    {
        // A group seen on one day has no line of its own and would leave the model without an answer.
        var lines = _rows.GroupBy(r => r.Group).Where(g => g.Select(r => r.Day).Distinct().Skip(1).Any()).Select(g => g.Key).Order(StringComparer.Ordinal).ToList();
        foreach (var name in _rows.Select(r => r.Group).Distinct().Except(lines)) _remarks.Add($"{name} was tested on one day only and has no line.");
        var kept = _rows.Where(r => lines.Contains(r.Group)).ToList();
        if (lines.Count < 2) return [];
        var design = Start(kept)
            .Factor(Group, [.. kept.Select(r => r.Group)], lines[0]).Covariate(Day, [.. kept.Select(r => r.Day)]).Interaction(Group, Day);
        if (Fit(design, "straight lines of groups") is not { } model) return [];
        // The line of a group is that of the first plus its own difference; columns are: 1, groups, day, groups × day.
        var columns = model.Design.FixedNames.Count;
        return lines.Select((name, i) =>
        {
            var weights = new double[columns];
            weights[lines.Count] = 1;
            if (i > 0) weights[lines.Count + i] = 1;
            return new TrendSlope(name, model.Contrast($"{name}, change a day", weights, level: _level));
        });
    }

    private ModelDesign Start() => Start(_rows);

    private ModelDesign Start(IReadOnlyList<TrendRow> rows)
    {
        var design = ModelDesign.Of([.. rows.Select(r => r.Value)], [.. rows.Select(r => r.Athlete)], _name, "athlete");
        return rows.All(r => r.Weight == 1) ? design : design.Weighted([.. rows.Select(r => r.Weight)]);
    }

    private MixedModel? Fit(ModelDesign design, string what)
    {
        var level = design.RandomIntercept();
        var days = design.Rows == _rows.Count ? _day : null;
        if (_slopes)
        {
            var slope = days is null ? level.RandomSlope(Day) : level.RandomSlope(Day, days);
            var fit = slope.Fit();
            // On the boundary the slopes are not borne out by the data: the simpler model has the steadier errors.
            if (fit.Ending == MixedEnding.Converged) return fit.Model;
            _slopes = false;
            _remarks.Add($"Athletes have no slopes of their own in the model: {fit.Explanation}");
        }

        var plain = level.Fit();
        if (plain.Ending != MixedEnding.Converged) _remarks.Add($"{what}: {plain.Explanation}");
        return plain.Model;
    }

    private static ModelPoint Point(string label, double day) => new ModelPoint().With(Cell, label).With(Day, day);

    private static string Name(string? group, double day) => $"{group ?? "squad"}, {Number(day)}";

    private static string Number(double day) => day.ToString("0.###", CultureInfo.InvariantCulture);
}

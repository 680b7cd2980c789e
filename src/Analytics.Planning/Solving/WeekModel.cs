using Analytics.Planning.Plans;
using Google.OrTools.Sat;

namespace Analytics.Planning.Solving;

/// <summary>The constraint model of a week: units, sessions, choices and the rules over them.</summary>
internal sealed class WeekModel
{
    private WeekModel(PlanProblem problem, IReadOnlyList<TrainingUnit> units, bool explain)
    {
        Problem = problem;
        Model = new CpModel();
        Rules = new RuleSwitches(Model, problem.Rules, explain);
        Units = units;
        Around = WorkAround.Of(problem);
    }

    public PlanProblem Problem { get; }

    public CpModel Model { get; }

    public RuleSwitches Rules { get; }

    public IReadOnlyList<TrainingUnit> Units { get; }

    /// <summary>Work of earlier plans on days near the week.</summary>
    public IReadOnlyList<WorkAround> Around { get; }

    /// <summary>Units in their sessions, by session and unit.</summary>
    public List<UnitDay> Days { get; } = [];

    /// <summary>What a rule takes out beforehand.</summary>
    public List<Exclusion> Excluded { get; } = [];

    /// <summary>Days of one unit, by date.</summary>
    public IEnumerable<UnitDay> Of(int unit) => Days.Where(d => d.UnitIndex == unit);

    /// <summary>Builds the model with all constraints, without objective.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="units">The units planned in it.</param>
    /// <param name="explain">Whether each rule gets a switch.</param>
    /// <param name="others">Plans of units outside the model, who have their places at the stations.</param>
    public static WeekModel Of(PlanProblem problem, IReadOnlyList<TrainingUnit> units, bool explain, IReadOnlyList<UnitSession>? others = null)
    {
        var week = new WeekModel(problem, units, explain);
        var candidates = Candidates.All(problem);
        foreach (var slot in problem.Sessions.OrderBy(s => s.Date).ThenBy(s => s.Start ?? TimeOnly.MinValue))
        {
            var kind = problem.Kinds.First(k => k.Id == slot.Kind);
            for (var u = 0; u < week.Units.Count; u++)
            {
                if (!slot.Has(week.Units[u].Group)) continue;
                var day = new UnitDay(week.Units[u], u, slot, kind);
                week.Days.Add(day);
                DayChoices.Add(week, day, candidates);
            }
        }

        OwnWorkLinks.Add(week);
        DemandConstraints.Add(week);
        TimeConstraints.Add(week);
        DoseConstraints.Add(week);
        SpacingConstraints.Add(week);
        StationConstraints.Add(week, others ?? []);
        KeptConstraints.Add(week);
        return week;
    }

    /// <summary>A variable that can only be true when one of the choices is: for what is rewarded.</summary>
    public BoolVar Reached(IReadOnlyList<BoolVar> choices, string name)
    {
        if (choices.Count == 1) return choices[0];
        var reached = Model.NewBoolVar(name);
        Model.Add(LinearExpr.Sum(choices) >= reached);
        return reached;
    }

    /// <summary>A variable that must be true when one of the choices is: for what is limited or costs.</summary>
    public BoolVar Touched(IReadOnlyList<BoolVar> choices, string name)
    {
        if (choices.Count == 1) return choices[0];
        var touched = Model.NewBoolVar(name);
        foreach (var choice in choices) Model.AddImplication(choice, touched);
        return touched;
    }
}

/// <summary>An exercise a rule took out for a unit in a session.</summary>
internal sealed record Exclusion(UnitDay Day, Candidate Candidate, RuleAtPlace Rule);

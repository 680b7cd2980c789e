using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.TrainingWeek;

/// <summary>The cautions that travel with a week.</summary>
internal static class WeekCautions
{
    public static ReportBlock Of(WeekView view)
    {
        var squad = view.Week.Squad;
        List<string> lines =
        [
            "A plan is a proposal to a qualified coach. It is not medical advice and predicts no injury. Local rules and licensed staff come first.",
            "Heavy lifts: warm up, trained spotters or safety bars for squat and bench press, never a spotter for cleans and snatches; stop on pain, dizziness or lost technique. Young players need close qualified supervision.",
            "Jumps and sprints: firm, even ground, fresh legs, full rest. Stop when contacts get longer or landings louder.",
            "Loads come from tests, some of them estimates; the coach takes weight off whenever bar speed or technique says so.",
            "Restrictions are taken as listed by licensed staff. Nothing here clears anybody; who is listed as limited asks them first.",
        ];
        lines.AddRange(view.Notes(squad.Out).Concat(view.Notes(squad.PartlyOut)).Concat(view.Notes(squad.Limited)).Select(n => view.Only is null ? $"{n.Name}: {n.Reason}." : Words.Capital(n.Reason) + "."));
        return new Cautions(lines);
    }
}

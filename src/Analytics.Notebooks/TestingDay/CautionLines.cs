using Analytics.Notebooks.Blocks;

namespace Analytics.Notebooks.TestingDay;

/// <summary>The cautions that travel with a testing day.</summary>
internal static class CautionLines
{
    public static Block Of(DayContext day)
    {
        var doubtful = PlayerTable.Strength.Columns(day.Metrics)
            .SelectMany(m => day.Standing(m).Day.Values).Where(v => v.Doubts.Count > 0).Select(v => v.AthleteId).Distinct().Count();
        return new Cautions(
            "These estimates support a qualified coach's judgement; they are not medical advice and predict no injury. Local rules and licensed staff come first.",
            "Maximal tests need clearance, a warm-up, trained spotters for squat and bench press (never for cleans), and a stop on pain, dizziness, lost technique or two misses. Young players need close qualified supervision.",
            "An estimated maximum is a range. Do not raise loads on one made with more than ten repetitions."
                + (doubtful > 0 ? $" Today {Words.Players(doubtful)} {(doubtful == 1 ? "has" : "have")} a doubtful strength figure, marked ~." : ""),
            "Momentum describes bodies in motion, not how hard to hit: head up and out of contact. A suspected concussion means out, and to medical staff.");
    }
}

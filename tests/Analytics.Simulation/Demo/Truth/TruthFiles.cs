using System.Globalization;
using System.Text;
using Analytics.Simulation.Demo.Files;
using Analytics.Simulation.Demo.Squad;

namespace Analytics.Simulation.Demo.Truth;

/// <summary>The truth as files, kept in the folder <c>truth</c> beside the season; no part of the season itself.</summary>
public static class TruthFiles
{
    public const string Folder = "truth";

    public static IReadOnlyDictionary<string, byte[]> Write(SeasonTruth truth) => new SortedDictionary<string, byte[]>(StringComparer.Ordinal)
    {
        [Folder + "/truth.json"] = Encoding.UTF8.GetBytes(
            $$"""
            {
              "what": "True values behind an invented season. Written by the generator, read by tests only.",
              "seed": {{truth.Seed}},
              "days": [{{string.Join(", ", SeasonCalendar.Of(truth.Options).Select(d => $"\"{Text(d)}\""))}}]
            }

            """),
        [Folder + "/abilities.csv"] = CsvText.Plain.Write(Abilities(truth)),
        [Folder + "/gains.csv"] = CsvText.Plain.Write(Gains(truth)),
        [Folder + "/athletes.csv"] = CsvText.Plain.Write(Athletes(truth)),
        [Folder + "/runs.csv"] = CsvText.Plain.Write(Runs(truth)),
        [Folder + "/contacts.csv"] = CsvText.Plain.Write(Contacts(truth)),
        [Folder + "/typing-errors.csv"] = CsvText.Plain.Write(Errors(truth)),
    };

    private static Sheet Abilities(SeasonTruth truth)
    {
        var sheet = new Sheet("abilities", "date", "athlete_id", "body_mass_lb", "back_squat_1rm_lb", "bench_press_1rm_lb", "power_clean_1rm_lb",
            "countermovement_in", "standing_long_in", "drop_rebound_in", "drop_contact_ms", "drop_index_m_per_s", "speed_v_m_per_s", "time_constant_s",
            "pro_agility_s", "overhead_back_m", "stairs_s");
        for (var day = 0; day < SeasonCalendar.Of(truth.Options).Count; day++)
        {
            foreach (var player in truth.Players)
            {
                var a = player.On(day);
                sheet.Add(Text(SeasonCalendar.DateOf(day)), player.Id, Sheet.Fixed(a.MassPounds, 3), Sheet.Fixed(a.SquatPounds, 3),
                    Sheet.Fixed(a.BenchPounds, 3), Sheet.Fixed(a.CleanPounds, 3), Sheet.Fixed(a.JumpInches, 4), Sheet.Fixed(a.LongJumpInches, 4),
                    Sheet.Fixed(a.DropJumpInches, 4), Sheet.Fixed(a.ContactMilliseconds, 3), Sheet.Fixed(a.ReactiveIndex, 5),
                    Sheet.Fixed(a.SpeedMetresPerSecond, 5), Sheet.Fixed(a.TimeConstantSeconds, 5), Sheet.Fixed(a.AgilitySeconds, 5),
                    Sheet.Fixed(a.ThrowMetres, 4), Sheet.Fixed(a.StairSeconds, 5));
            }
        }

        return sheet;
    }

    /// <summary>Relative gain from the first day; a quality that does not change reads 0 and is flagged.</summary>
    private static Sheet Gains(SeasonTruth truth)
    {
        var sheet = new Sheet("gains", "athlete_id", "quality", "unchanged", "by_march", "by_april", "by_june");
        foreach (var player in truth.Players)
        {
            foreach (var quality in Enum.GetValues<TrainedQuality>())
            {
                var gain = player.SeasonGain[quality];
                string Reached(int day) => Sheet.Fixed(gain * player.GainReached[day], 5);
                sheet.Add(player.Id, quality, gain == 0 ? "yes" : "no", Reached(SeasonCalendar.March), Reached(SeasonCalendar.April), Reached(SeasonCalendar.June));
            }
        }

        return sheet;
    }

    private static Sheet Athletes(SeasonTruth truth)
    {
        var sheet = new Sheet("athletes", "athlete_id", "repetition_cost", "start_lead_m", "hang_clean_share", "lifts_in_sets");
        foreach (var p in truth.Players)
            sheet.Add(p.Id, Sheet.Fixed(p.RepetitionCost, 5), Sheet.Fixed(p.StartLeadMetres, 4), Sheet.Fixed(p.HangCleanShare, 4), p.LiftsInSets ? "yes" : "no");
        return sheet;
    }

    private static Sheet Runs(SeasonTruth truth)
    {
        var sheet = new Sheet("runs", "date", "athlete_id", "attempt", "speed_v_m_per_s", "time_constant_s", "start_lead_m");
        foreach (var r in truth.Runs)
            sheet.Add(Text(SeasonCalendar.DateOf(r.Day)), truth.Players[r.Player].Id, r.Attempt, Sheet.Fixed(r.SpeedMetresPerSecond, 5),
                Sheet.Fixed(r.TimeConstantSeconds, 5), Sheet.Fixed(r.StartLeadMetres, 4));
        return sheet;
    }

    private static Sheet Contacts(SeasonTruth truth)
    {
        var sheet = new Sheet("contacts", "date", "athlete_id", "attempt", "clip", "time_s", "near_shin_lean_deg", "trunk_lean_deg", "speed_m_per_s", "momentum_kg_m_per_s", "trunk_change_deg");
        foreach (var c in truth.Contacts)
        {
            var (run, t) = (c.Run, c.Run.ContactSeconds);
            sheet.Add(Text(SeasonCalendar.DateOf(c.Day)), truth.Players[c.Player].Id, c.Attempt, c.Clip, Sheet.Fixed(t, 5), Sheet.Fixed(run.ShinLean(t), 3), Sheet.Fixed(run.TrunkLean(t), 3),
                Sheet.Fixed(run.SpeedX(t), 4), Sheet.Fixed(run.Momentum(t), 2), Sheet.Fixed(run.TrunkLean(t + 0.15) - run.TrunkLean(t), 3));
        }

        return sheet;
    }

    private static Sheet Errors(SeasonTruth truth)
    {
        var sheet = new Sheet("typing-errors", "kind", "file", "line", "column", "athlete_id", "written", "meant");
        foreach (var e in truth.Errors) sheet.Add(e.Kind, e.File, e.Line, e.Column, e.AthleteId, e.Written, e.Meant);
        return sheet;
    }

    private static string Text(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}

using Analytics.Season.Training;

namespace Analytics.Season.Examples;

/// <summary>The folder <c>training</c> of a new season: the shipped files whole, to be edited, and short examples of the others.</summary>
internal static class ExampleTraining
{
    /// <summary>Path inside the season, and text.</summary>
    public static IReadOnlyList<(string Path, string Text)> All { get; } =
    [
        .. new[] { "exercises.csv", "schemes.csv", "day-kinds.csv", "week-shapes.csv", "rules.csv", "rooms.csv" }.Select(f => (Of(f), ShippedTraining.Text(f))),
        (Of("weights.csv"), ShippedTraining.Text("weights-lb.csv")),
        (Of("calendar.csv"), """
            date,start,kind,minutes,room,groups
            2026-01-26,07:00,max_strength,75,weight room,Offensive line+Linebackers
            2026-01-26,08:30,max_strength,75,weight room,Receivers
            2026-01-27,07:00,speed,60,weight room,
            2026-01-29,07:00,power,70,weight room,
            2026-01-31,19:00,game,,,

            """),
        (Of("restrictions.csv"), """
            athlete_id,from,to,out,note
            P003,2026-02-02,2026-02-15,sprint+jump,hamstring

            """),
        (Of("targets.csv"), """
            group,metric,value,unit,note
            Offensive line,back_squat_1rm,500,lb,by the first game
            ,sprint_10yd,1.85,s,

            """),
        (Of("plan.csv"), """
            date,group,athlete_id,exercise,scheme,part,keep,sets,repetitions,load_lb
            2026-01-26,Offensive line,,front_squat,strength_4x3_85,shared,keep,,,
            2026-01-26,,P002,pull_up,,own,never,,,

            """),
    ];

    private static string Of(string file) => $"{TrainingFolder.Name}/{file}";
}

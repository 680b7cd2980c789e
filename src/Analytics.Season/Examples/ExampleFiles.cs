namespace Analytics.Season.Examples;

/// <summary>The files of a new season. Every name is invented.</summary>
internal static class ExampleFiles
{
    private const string Day = "testing/2026-01-19/";
    private const string Second = "testing/2026-01-22/";

    /// <summary>Path inside the season, and text.</summary>
    public static IReadOnlyList<(string Path, string Text)> All { get; } =
    [
        ("season.json", """
            {
              "club": "Example Club",
              "season": "2026",
              "from": "2026-01-05",
              "to": "2026-07-31",
              "units": { "mass": "lb", "jump": "in", "speed": "mph" },
              "defaults": { "timing": "electronic", "start": "three_point_hand", "jump_method": "mat" },
              "retests": [["2026-01-19", "2026-01-22"]],
              "worthwhile": { "share": 0.2 },
              "video": {
                "rate_hz": 60, "y_axis": "down", "picture_height_px": 1080,
                "calibration": { "from": "stick_low", "to": "stick_high", "length_m": 2.0, "end_point_sd_px": 1.5 },
                "digitising_sd_px": 1.5, "contact_window_s": [0.40, 0.45]
              }
            }

            """),
        ("athletes.csv", """
            athlete_id,name,position,group,stature_in,birth_year,training_years
            P001,Example Lineman,OT,Offensive line,77,2001,6
            P002,Example Linebacker,LB,Linebackers,73,2002,4.5
            P003,Example Receiver,WR,Receivers,71,2003,

            """),
        ("availability.csv", """
            athlete_id,from,to,status,note
            P003,2026-02-02,2026-02-15,injured,hamstring

            """),
        ("sessions.csv", """
            date,athlete_id,focus,minutes,session_rpe,jump_contacts,lift,sets,repetitions,load_lb
            2026-01-20,P001,max_strength,60,7,20,back_squat,5,3,405
            2026-01-20,P001,max_strength,,,,bench_press,4,5,275
            2026-01-20,P002,max_strength,60,6,20,,,,
            2026-01-20,P002,max_strength,,,,back_squat,5,3,355
            2026-01-23,P003,speed,45,6,30,,,,

            """),
        (Day + "body.csv", """
            athlete_id,mass_lb
            P001,302
            P002,231
            P003,196

            """),
        (Day + "lifts.csv", """
            athlete_id,lift,set,load_lb,reps,rir,bar_rise_cm,pull_time_s
            P001,back_squat,1,455,3,1,,
            P001,bench_press,1,325,3,,,
            P002,back_squat,1,405,3,1,,
            P002,power_clean,1,245,1,,85,0.62
            P003,bench_press,1,225,5,2,,

            """),
        (Day + "jumps.csv", """
            athlete_id,jump,method,attempt,height_in,distance_in,flight_ms,contact_ms,obstacle_in,push_off_cm,tester
            P001,countermovement,mat,1,24.5,,,,,,KB
            P001,countermovement,mat,2,25.1,,,,,,KB
            P002,drop,mat,1,,,548,192,12,,KB
            P003,standing_long,tape,1,,121,,,,,RM

            """),
        (Day + "sprints.csv", """
            athlete_id,attempt,timing,start,t_5yd_s,t_10yd_s,t_20yd_s,t_40yd_s
            P001,1,electronic,three_point_hand,1.15,1.84,3.05,5.21
            P002,1,electronic,three_point_hand,1.06,1.69,2.76,4.74
            P003,1,electronic,three_point_hand,0.99,1.57,2.57,4.43

            """),
        (Day + "agility.csv", """
            athlete_id,test,attempt,timing,side,time_s
            P002,pro_agility,1,electronic,left,4.42
            P002,pro_agility,2,electronic,right,4.47
            P003,505,1,electronic,left,2.31

            """),
        (Day + "throws.csv", """
            athlete_id,throw,attempt,ball_kg,distance_m,side
            P001,overhead_back,1,5,14.2,
            P002,rotational,1,4,11.9,left

            """),
        (Day + "stairs.csv", """
            athlete_id,attempt,rise_cm,time_s
            P002,1,105,0.54

            """),
        (Day + "contact.csv", """
            athlete_id,attempt,reading,clip,rate_hz,first_movement_frame,contact_frame,gap_yd,against,travel
            P002,1,1,p002-1,60,3,29,0.5,bag,right
            P002,1,2,p002-1,60,4,29,0.5,bag,right

            """),
        (Day + "clips/p002-1.csv", ExampleClip.Points),
        (Second + "body.csv", """
            athlete_id,mass_lb
            P001,301
            P002,231
            P003,197

            """),
        (Second + "jumps.csv", """
            athlete_id,jump,method,attempt,height_in
            P001,countermovement,mat,1,24.8
            P001,countermovement,mat,2,24.6

            """),
        .. ExampleTraining.All,
    ];
}

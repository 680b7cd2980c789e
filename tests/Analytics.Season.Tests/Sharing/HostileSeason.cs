using Analytics.Season.Tests.Support;

namespace Analytics.Season.Tests.Sharing;

/// <summary>A season that names people wherever it can: in every kind of cell, in file, sheet and folder names, in settings, and people nobody listed.</summary>
internal static class HostileSeason
{
    /// <summary>Words that must not come through, those of people who are not in the list among them.</summary>
    public static readonly string[] People =
    [
        "AB", "Zoltan", "Quenby", "Xanthe_Rook", "Xanthe", "Rook", "LB-7", "Quillon", "ODreeve", "Dreeve", "Ulric", "Vandermoot", "Benedikt", "Pelham", "Gristwood", "Morwenna", "Tregarth", "Yestyn", "P8", "Ottoline", "Wexcombe", "Bronagh", "Kittredge", "Isolde", "Penhallow",
    ];

    private const string Settings = """
        {"club":"Friends of Zoltan Quenby","season":"2026 for AB","from":"2026-01-05","to":"2026-07-31",
         "defaults":{"timing":"electronic","start":"three_point_hand","jump_method":"mat"},
         "worthwhile":{"zoltan_quenby":1},"test_minutes":{"xanthe":3},"morwenna":"tregarth",
         "video":{"rate_hz":240,"picture_height_px":1080,"markers":{"quenby_knee":"knee"},"calibration":{"from":"quenby_low","to":"xanthe_high","length_m":2.0},"digitising_sd_px":1.5}}
        """;

    private const string Squad = """
        athlete_id,name,position,group,birth_year,stature_in,nickname of Ottoline
        AB,Zoltan Quenby,LB,Linebackers,2001,72,x
        Xanthe_Rook,"Rook, Xanthe",LB,Linebackers of AB and Zoltan Quenby,2001,72,x
        LB-7,Quillon O'Dreeve,WR,Receivers,2003,71,x
        17,Ulric Vandermoot,QB,Quarterbacks,1999,73,x
        squat,Benedikt Squat,OT,Offensive line,2000,77,x
        P8,Ottoline Wexcombe,OT,Offensive line,2000,nine,x
        P8,Yestyn Gristwood,OT,Offensive line,2000,77,x
        """;

    public static TemporarySeason Make()
    {
        var film = new RunnerClip { Stature = 1.83 };
        var season = new TemporarySeason()
            .With("season.json", Settings)
            .With("athletes.csv", Squad)
            .With("availability.csv", "athlete_id,from,to,status,note\nAB,2026-02-01,2026-04-01,injured,Pelham said so\nAB,2026-03-01,2026-03-03,ill,\nLB-7,2026-02-01,2026-01-01,hurt by Pelham,\nPelham Gristwood,2026-02-01,,ill,\n17,2026-03-01,2026-03-03,absent,\n")
            .With("sessions.csv", "date,athlete_id,focus,minutes,session_rpe,lift,sets,reps,load_lb\n2026-02-05,AB,x,60,6,quenby_special,3,3,100\n2026-02-05,AB,x,60,6,zoltan_special,3,3,990\n2026-02-02,AB,strength with Quenby,60,6,,,,\n2026-02-02,17,1:1 LB-7,60,6,,,,\n2026-02-02,LB-7,17,60,6,,,,\n2026-02-02,Morwenna Tregarth,speed,60,6,,,,\n2026-02-03,AB,speed,Ulric,6,,,,\n")
            .With("testing/2026-03-02/body.csv", "athlete_id,mass_lb,tester\nAB,221,Zoltan Quenby\nXanthe_Roook,200\nPelham Gristwood,180\nquenby,180\nZoltan Quenby,221\n17,205\n17,206\nLB-7,Quillon\nP8,240,Yestyn\nsquat,300\n020 7946 0018,200\n")
            .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps,Quenby remarks,spotted by Morwenna\nAB,zoltan_special,400,3,x,y\nAB,quenby_special,400,3,x,y\nLB-7,back_squat,410,three of Ulric,x,y\nsquat,back_squat,500,3,x,y\nsquat,squat,500,3,x,y\n17,back_squat,17,3,x,y\n")
            .With("testing/2026-03-02/sprints.csv", "P8,Ottoline Wexcombe,OT\nAB,Zoltan Quenby,LB\n")
            .With("testing/2026-03-02/agility.csv", "athlete_id,test,time_s,tester\n17,shuttle_for_ulric,4.4,Isolde Penhallow who is our physiotherapist on Mondays\n")
            .With("testing/2026-03-02/throws.csv", "athlete_id,throw,ball_lb,distance_ft,tester\nP8,wexcombe,8,40,Bronagh Kittredge\n")
            .With("testing/2026-03-02/contact.csv", "athlete_id,attempt,clip,rate_hz,first_movement_frame,contact_frame,against,steps\n"
                + $"AB,1,quenby-1,240,{film.Rest},{film.ContactFrame},LB-7,\n"
                + $"LB-7,1,both of Ulric,240,{film.Rest},{film.ContactFrame},bag,\n17,1,both of Ulric,240,{film.Rest},{film.ContactFrame},AB,\n"
                + $"P8,1,wexcombe,240,{film.Rest},{film.ContactFrame},Ulric Vandermoot,\nP8,2,P8-2,240,{film.Rest},{film.ContactFrame},P8,\n"
                + $"squat,1,yestyn,240,{film.Rest},{film.ContactFrame},,at Pelham\nsquat,2,rook,240,{film.Rest},{film.ContactFrame},,\n")
            .With("testing/2026-03-02/clips/quenby-1.csv", film.Long().Replace("low", "quenby_low", StringComparison.Ordinal).Replace("high", "xanthe_high", StringComparison.Ordinal).Replace("knee", "quenby_knee", StringComparison.Ordinal) + "3,elbow of Pelham,1,1\n3,hip,Pelham,1\n")
            .With("testing/2026-03-02/clips/both of Ulric.csv", film.Long())
            .With("testing/2026-03-02/clips/rook.csv", "frame,pelham_x_px,pelham_y_px,hip_x_px,hip_y_px,yestyn_x\n1,1,,2,3,4\n")
            .With("testing/2026-03-02/clips/Morwenna.times.csv", "frame,time_s\n1,2\n")
            .With("testing/2026-03-02/clips/photo of Quillon.jpg", "x")
            .With("testing/2026-03-02/Tregarth.csv", "athlete_id,mass_lb\nAB,221\n")
            .With("testing/2026-03-02/Tregarth.md", "x")
            .With("testing/Quenby/body.csv", "athlete_id,mass_lb\nAB,221\n")
            .With("testing/2026-03-03.xlsx", TestWorkbook.Of(("body", [["athlete_id", "mass_lb"], ["AB", 222.0], ["Gristwood", 222.0]]), ("Quenby", [["athlete_id"], ["AB"]]), ("Lifts", [["AB", "Zoltan Quenby"], ["LB-7", "x"]])))
            .With("testing/2026-03-04.Pelham", "x")
            .With("training/exercises.csv", "exercise,name,pattern,quality,load_basis,least_percent,most_percent,repetition_time_s,stations,implement,prerequisite,caution,Isolde says\n"
                + "quenby_special,the squat of Zoltan,squat,maximal_strength,zoltan_special,40,90,4,rack of Ottoline+ulric_rack,quenby_bar,as AB does,ask Ottoline,x\n"
                + "zoltan_special,Zoltan,squat,maximal_strength,back_squat,40,90,4,,,,,\nquillon_hop,,jump,Ulric,,,,1,,,,,\nback_squat,back squat,squat,maximal_strength,back_squat,40,90,4,rack,barbell,,,\n")
            .With("training/schemes.csv", "scheme,name,qualities,sets,repetitions,rest_s,source\nfives_of_rook,fives of Xanthe,maximal_strength,5,5,90,Dreeve\nzoltans,x,maximal_strength,5,five of AB,90,\n")
            .With("training/day-kinds.csv", "kind,name,quality,least,most,own_work,source\nrook_day,day of Xanthe,maximal_strength,1,2,yes,Yestyn\nrook_day,day of Quenby,trunk_control,1,2,yes,Ulric\n")
            .With("training/week-shapes.csv", "phase,weekday,kind,minutes,source\noff_season,monday,rook_day,60,Quillon\noff_season,tuesday,ulric_day,60,\n")
            .With("training/rules.csv", "rule,value,unit,handling,source\nhard_sets,10,sets,,Pelham Vandermoot\nulric_rule,1,,,\n")
            .With("training/rooms.csv", "room,station,places\nQuenby hall,rack of Ottoline,4\nQuenby hall,bench of AB,4\n")
            .With("training/weights.csv", "item,weight_lb,pairs\nbar,45,\nplate,45,2\nquenby_bar,20,\nstone of Ulric,20,\n")
            .With("training/calendar.csv", "date,start,kind,minutes,room,groups\n2026-03-09,07:00,rook_day,60,Quenby hall,Linebackers of AB and Zoltan Quenby\n2026-03-09,07:30,rook_day,60,Quenby hall,Linebackers of AB and Zoltan Quenby+Zoltan\n2026-03-09,07:30,rook_day,60,,Linebackers of AB and Zoltan Quenby+Receivers\n2026-03-10,when Pelham comes,rook_day,60,,\n")
            .With("training/restrictions.csv", "athlete_id,from,to,out,note\nAB,2026-03-01,,quenby_special+jump,Wexcombe hit him\nXanthe_Roook,2026-03-01,,jump,\nP8,2026-03-01,,all for Ottoline,\nsquat,2026-03-01,,neck,Bronagh\n")
            .With("training/targets.csv", "group,metric,value,unit,note,Penhallow\nLinebackers of AB and Zoltan Quenby,back_squat_1rm,400,lb,Ulric wants it\n,cmj_height,30,in,for Pelham and 17\nQuenby,cmj_height,30,in,\n,zoltan_special,400,lb,\n,sprint_10yd,1.7,quillons,\n,sprint_10yd,Ulric,s,\n")
            .With("training/plan.csv", "date,group,athlete_id,name,exercise,scheme,part,keep,why\n2026-03-09,,AB,Zoltan Quenby,quenby_special,fives_of_rook,own,keep,Ulric said\n2026-03-09,Linebackers of AB and Zoltan Quenby,,,quenby_special,,shared,,\n2026-03-09,,17,,quenby_special,,,never,\n2026-03-09,,Gristwood,,zoltan_lift,,,,\n")
            .With("training/plan of Tregarth.csv", "x")
            .With("photos/Zoltan.jpg", "x")
            .With("Wexcombe.csv", "x\n");
        Directory.CreateDirectory(Path.Combine(season.Folder, "testing/2026-03-02/Ottoline"));
        return season;
    }
}

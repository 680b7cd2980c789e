namespace Analytics.Season.Tests.Support;

/// <summary>A season and the one before it: P001 is in both, P009 left, P002 came.</summary>
internal sealed class TwoSeasons : IDisposable
{
    public const string EarlierSettings = """
        {"club":"Old name","season":"Spring 2025","from":"2025-01-06","to":"2025-07-31","units":{"mass":"kg"},
         "retests":[["2025-01-20","2025-01-23"]],
         "defaults":{"timing":"electronic","start":"three_point_hand","jump_method":"mat"}}
        """;

    public TemporarySeason Earlier { get; } = new TemporarySeason()
        .With("season.json", EarlierSettings)
        .With("athletes.csv", "athlete_id,name,position,group,birth_year\np001,Ada Stone,LB,Linebackers,2001\nP009,Ian Holt,QB,Quarterbacks,1999\n")
        .With("availability.csv", "athlete_id,from,to,status\nP001,2025-03-01,2025-03-09,ill\nP009,2025-05-01,,injured\n")
        .With("sessions.csv", "date,athlete_id,focus,minutes,session_rpe\n2025-02-03,P001,strength,60,6\n")
        .With("testing/2025-01-20/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_squat,400,3\nP009,back_squat,300,3\nP077,back_squat,300,3\n")
        .With("testing/2025-01-20/body.csv", "athlete_id,mass_lb\nP001,221\n");

    public TemporarySeason Latest { get; } = new TemporarySeason()
        .With("athletes.csv", "athlete_id,name,position,group,birth_year\nP001,Ada Stone,LB,Linebackers,\nP002,Ben Vale,LB,Linebackers,2002\n")
        .With("availability.csv", "athlete_id,from,to,status\nP001,2026-04-01,,limited\n")
        .With("sessions.csv", "date,athlete_id,focus,minutes,session_rpe\n2026-02-02,P001,speed,45,5\n")
        .With("testing/2026-03-02/lifts.csv", "athlete_id,lift,load_lb,reps\nP001,back_squat,420,3\nP002,back_squat,350,3\n");

    public SeasonData Open() => SeasonShelf.Open(Latest.Folder, Earlier.Folder);

    public string Fault() => Assert.Throws<SeasonException>(Open).Message;

    public void Dispose()
    {
        Earlier.Dispose();
        Latest.Dispose();
    }
}

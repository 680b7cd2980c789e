using System.Text;

namespace Analytics.Season.Tests.Support;

/// <summary>A season folder in a temporary place, removed at the end.</summary>
internal sealed class TemporarySeason : IDisposable
{
    public const string Settings = """
        {"club":"Harbour Bulls","season":"Spring 2026","from":"2026-01-05","to":"2026-07-31",
         "defaults":{"timing":"electronic","start":"three_point_hand","jump_method":"mat"}}
        """;

    public const string Squad = """
        athlete_id,name,position,group,stature_in,birth_year
        P001,Ada Stone,LB,Linebackers,72,2001
        P002,Ben Vale,LB,Linebackers,71,2002
        P003,Cal Reed,OT,Offensive line,77,2000
        P004,Dan Frost,WR,Receivers,70,2003
        """;

    public TemporarySeason()
    {
        Folder = Path.Combine(Path.GetTempPath(), "season-tests", Guid.NewGuid().ToString("N"));
        Directory.CreateDirectory(Folder);
        With("season.json", Settings);
        With("athletes.csv", Squad);
    }

    public string Folder { get; }

    public TemporarySeason With(string path, string text, Encoding? encoding = null)
        => With(path, [.. (encoding ?? new UTF8Encoding(false)).GetPreamble(), .. (encoding ?? new UTF8Encoding(false)).GetBytes(text)]);

    public TemporarySeason With(string path, byte[] bytes)
    {
        var full = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllBytes(full, bytes);
        return this;
    }

    public TemporarySeason Without(string path)
    {
        File.Delete(Path.Combine(Folder, path));
        return this;
    }

    public SeasonData Read()
    {
        var data = SeasonReader.Read(Folder);
        Ledger.Check(data);
        return data;
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

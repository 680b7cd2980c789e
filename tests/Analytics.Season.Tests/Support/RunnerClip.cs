using System.Globalization;
using System.Text;

namespace Analytics.Season.Tests.Support;

/// <summary>A made-up clip of a start into contact in pixels, with noise of 1 px: a body of given stature that speeds up evenly, limbs swinging. Not made by the code under test.</summary>
internal sealed record RunnerClip
{
    public const string Day = "testing/2026-03-02/";

    public const string Video = """
        "video":{"rate_hz":240,"picture_height_px":1080,"calibration":{"from":"low","to":"high","length_m":2.0},"digitising_sd_px":1.5}
        """;

    public double Hertz { get; init; } = 240;

    public bool Left { get; init; }

    public bool YUp { get; init; }

    public bool Swapped { get; init; }

    public double Stature { get; init; } = 1.83;

    /// <summary>Acceleration from first movement, m/s².</summary>
    public double Acceleration { get; init; } = 5;

    /// <summary>Frames of rest before first movement.</summary>
    public int Rest { get; init; } = 12;

    /// <summary>Time from first movement to contact, s.</summary>
    public double Time { get; init; } = 0.43;

    public int ContactFrame => Rest + (int)Math.Round(Time * Hertz);

    /// <summary>The points: frame, marker, x, y in px.</summary>
    public List<(int Frame, string Marker, double X, double Y)> Points()
    {
        const double pixels = 200;
        var random = new Random(7);
        var points = new List<(int, string, double, double)>();
        for (var frame = 0; frame <= ContactFrame + 10; frame++)
        {
            var s = Math.Max(0, (frame - Rest) / Hertz);
            double x = 2 + 0.5 * Acceleration * s * s, y = 0.51 * Stature, swing = 0.45 * Math.Sin(2 * Math.PI * 1.6 * s), lean = 0.6 + Math.Min(0.2, 0.4 * s);
            Add("hip", x, y);
            Add("shoulder", x + 0.288 * Stature * Math.Sin(lean), y + 0.288 * Stature * Math.Cos(lean));
            double kneeX = x + 0.245 * Stature * Math.Sin(swing + 0.35), kneeY = y - 0.245 * Stature * Math.Cos(swing + 0.35);
            Add("knee", kneeX, kneeY);
            Add("ankle", kneeX + 0.246 * Stature * Math.Sin(swing - 0.4), kneeY - 0.246 * Stature * Math.Cos(swing - 0.4));
            if (frame > 1) continue;
            Add("low", 1, 0.1);
            Add("high", 1, 2.1);

            void Add(string marker, double metresX, double metresY)
            {
                double px = (Left ? 9.6 - metresX : metresX) * pixels + Noise(), up = metresY * pixels + Noise(), py = YUp ? up : 1080 - up;
                points.Add((frame, marker, Swapped ? py : px, Swapped ? px : py));
            }
        }

        return points;

        double Noise() => random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5;
    }

    public string Long() => Long(Points());

    public static string Long(IEnumerable<(int Frame, string Marker, double X, double Y)> points)
    {
        var text = new StringBuilder("frame,marker,x_px,y_px\n");
        foreach (var (frame, marker, x, y) in points) text.Append(CultureInfo.InvariantCulture, $"{frame},{marker},{x:0.0},{y:0.0}\n");
        return text.ToString();
    }

    /// <summary>Frames as rows, with a separator and a decimal mark.</summary>
    public string Wide(char separator = ',', char mark = '.')
    {
        string[] markers = ["hip", "shoulder", "knee", "ankle", "low", "high"];
        var points = Points().ToDictionary(p => (p.Frame, p.Marker));
        var text = new StringBuilder("frame" + separator + string.Join(separator, markers.SelectMany(m => new[] { m + " x (px)", m + " y (px)" })) + "\n");
        foreach (var frame in points.Keys.Select(k => k.Frame).Distinct().Order())
        {
            text.Append(frame);
            foreach (var marker in markers)
                text.Append(separator).Append(points.TryGetValue((frame, marker), out var p) ? Cell(p.X) + separator + Cell(p.Y) : $"{separator}");
            text.Append('\n');
        }

        return text.ToString();

        string Cell(double value) => value.ToString("0.0", CultureInfo.InvariantCulture).Replace('.', mark);
    }

    /// <summary>A row of contact.csv under its head, for athlete P001.</summary>
    public string Row(string clip = "a", double? hertz = null, string travel = "", string more = "", string moreHead = "", string athlete = "P001", int attempt = 1)
        => string.Create(CultureInfo.InvariantCulture, $"athlete_id,attempt,clip,rate_hz,first_movement_frame,contact_frame,travel{moreHead}\n{athlete},{attempt},{clip},{hertz ?? Hertz},{Rest},{ContactFrame},{travel}{more}\n");

    /// <summary>A season with video settings.</summary>
    public static TemporarySeason Season(string video = Video)
        => new TemporarySeason().With("season.json", TemporarySeason.Settings.TrimEnd()[..^1] + "," + video + "}");
}

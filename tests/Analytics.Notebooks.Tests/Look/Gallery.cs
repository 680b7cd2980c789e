using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Tests.Look;

/// <summary>Every block once, filled with an invented squad: what a person looks at, and what tests take apart.</summary>
/// <param name="outside">A text that people might type, put wherever a name, a group or a remark stands; null for tame ones.</param>
internal sealed class Gallery(string? outside = null)
{
    private static readonly string[] Names =
    [
        "Aldous", "Brannock", "Castell", "Dray", "Ewart", "Fenner", "Garrow", "Hallam", "Iddon", "Jessop", "Kerridge", "Lorne", "Maddox", "Nairn",
        "Orrell", "Pendry", "Quarles", "Rusk", "Sandal", "Tolley", "Umber", "Varley", "Wex", "Yarrow", "Zeal", "Ashdown", "Birkett", "Corran",
    ];

    private static readonly string[] Groups = ["Line", "Linebacker", "Secondary", "Receiver", "Backfield", "Tight end", "Quarterback"];

    public IReadOnlyList<Block> Blocks(int squad = 60) =>
    [
        new ReportHead("Testing day, 8 June", Typed("Marlow Quarrymen"), "54 of 61 players tested, compared with 13 April"),
        new Answers(
            new Answer("Squats moved; first steps have not yet.", $"Group change {Figures.SignedInterval(7, new(4, 10), 0, "kg")}. Ten-yard time {Figures.SignedInterval(-0.01, new(-0.03, 0.01), 2, "s")}: smaller than we can see with 54 players.", Tone.Gain),
            new Answer("Nine players clearly stronger, one clearly weaker.", "Chance alone would flag about three of 54. Names below.", Tone.Gain),
            new Answer(Typed("Linebackers meet contact late."), $"Mean {Figures.Interval(0.47, new(0.45, 0.49), 2, "s")} against 0.40 to 0.45\u2009s. Shin angle at the first step is the likeliest place to look.", Tone.Loss)),
        new Section("Where each group stands", "Every dot is a player. The bar is the group\u2019s middle player today; the ring above it is the middle on 13 April."),
        Strips(squad),
        new Section("Who changed since April: back squat", "The line is the 95\u2009% interval of a player\u2019s own change. A diamond means the change is beyond what our test error explains."),
        Changes(squad),
        new Section("Time to contact", "Dots are single repetitions; the bar is the player\u2019s mean on its 95\u2009% interval."),
        Contact,
        new Section("Speed over the first twenty yards"),
        Speeds,
        new Section("The season so far"),
        Trends,
        new Section("Who carries momentum"),
        Momentum,
        new Section("Who needs what next", "Only where the tests can say so; an empty line means they cannot."),
        Needs,
        new Section("What we left out"),
        new Callout("612 rows read, 604 kept, 8 held back.", "sprints.csv line 41: 10-yd time 17.2\u2009s, looks like 1.72", Typed("lifts.csv line 118: 405 typed as kg, looks like lb")),
        new Folded(Typed("Six more"), new Prose(Typed("body.csv line 9: 1085 kg, looks like 108.5"))),
        new Cautions("Maximal tests need a warm-up, spotters and a stop rule.", "Momentum is a rough figure, not an injury risk. Head up and out of contact; suspected concussion means out and to medical staff."),
        new Folded("Methods and sources", new Definitions(("Typical error", "From 22 players tested twice within a week; 3.2\u2009kg (2.4 to 4.6)."), ("Clear gain", "The interval of the change lies above zero and above what is too small to matter."))),
        new Definitions(("Notebook", "testing-day.ipynb"), ("Season", Typed("12 files, digest 9f3c0a71d2")), ("Library", "0.1.0")),
    ];

    public StripPlot Strips(int squad)
    {
        var random = new Random(20260608);
        return new StripPlot(
        [
            Panel(random, squad, "Back squat, estimated 1RM", string.Empty, new Axis("back squat", "kg", 0, Better.Higher), 170, 22),
            Panel(random, squad, "Countermovement jump", "mat", new Axis("height", "cm", 0, Better.Higher), 58, 7),
            Panel(random, squad, "Ten yards", "electronic, three-point start", new Axis("time", "s", 2, Better.Lower), 1.72, 0.07),
            Panel(random, squad, "Momentum at 10 yd", string.Empty, new Axis("momentum", "kg\u00b7m/s", 0, Better.Higher), 640, 60),
            Panel(random, squad, "Broad jump", string.Empty, new Axis("distance", "m", 2, Better.Higher), 2.68, 0.16),
            Panel(random, squad, "Body mass", string.Empty, new Axis("mass", "kg", 1), 101, 12),
        ], "13 April");
    }

    public ChangePlot Changes(int squad, int undecidedShown = 8)
    {
        var random = new Random(7);
        var rows = Enumerable.Range(0, squad).Select(i =>
        {
            var change = Math.Round((random.NextDouble() * 36) - 14, 1);
            var half = 7 + (random.NextDouble() * 4);
            var verdict = change - half > 0 ? ChangeVerdict.ClearGain : change + half < 0 ? ChangeVerdict.ClearLoss : i % 9 == 0 ? ChangeVerdict.TooSmallToMatter : ChangeVerdict.CannotTellYet;
            return new ChangeRow(Player(i), change, change - half, change + half, verdict, Typed(Groups[i % 7]), verdict is ChangeVerdict.ClearLoss ? Typed("check health first") : string.Empty);
        });
        return new ChangePlot
        {
            Title = "Change in back squat since 13 April",
            Axis = new Axis("change in estimated 1RM", "kg", 0, Better.Higher),
            Rows = [.. rows],
            TooSmall = 5,
            UndecidedShown = undecidedShown,
            Remark = "Typical error 3.2\u2009kg from 22 players tested twice. This rule flags an unchanged player 5\u2009% of the time.",
        };
    }

    public IntervalPlot Contact => new()
    {
        Title = "First movement to contact",
        Axis = new Axis("time to contact", "s", 2, Better.Lower),
        Window = new Window(Typed("target window"), 0.40, 0.45),
        Rows =
        [
            new(Typed("Aldous"), 0.445, 0.430, 0.461, "in window: 61\u2009%", Group: "LB") { Repetitions = [0.455, 0.457, 0.466, 0.467, 0.431] },
            new("Brannock", 0.423, 0.407, 0.439, "in window: 88\u2009%", Tone.Gain, "DL") { Repetitions = [0.397, 0.413, 0.414, 0.426] },
            new("Castell", 0.492, 0.476, 0.508, Typed("late"), Tone.Loss, Typed("LB"), "film at 240 frames a second") { Repetitions = [0.483, 0.491, 0.492, 0.499] },
            new("Dray", 0.452, null, null, "one repetition only", Tone.Plain, "DL") { Repetitions = [0.452] },
            new("Ewart", null, null, null, "not filmed", Tone.Plain, "TE"),
        ],
        Remark = "240 frames a second: reading error 0.003\u2009s.",
    };

    public CurvePlot Speeds => new()
    {
        Title = "Castell and the linebackers\u2019 middle",
        Across = new Axis("distance", "yd", 0),
        Up = new Axis("speed", "m/s", 1, Better.Higher),
        Curves = [Curve("Castell, 8 June", 8.1, 1.05, true), Curve("Linebackers, middle", 8.6, 0.98, false)],
    };

    public TrendPlot Trends => new(
        Trend("Back squat, middle of the squad", new Axis("estimated 1RM", "kg", 0, Better.Higher), 168, 5),
        Trend("Ten yards, middle of the squad", new Axis("time", "s", 2, Better.Lower), 1.74, -0.012),
        new TrendPanel
        {
            Title = "Jump height by group", Axis = new Axis("height", "cm", 1, Better.Higher),
            Lines = [.. new[] { "Line", "Secondary", "Receiver" }.Select((g, k) => new TrendLine(Typed(g), [.. Days.Select((d, i) => new TrendPoint(d, 52 + (4 * k) + (i * (0.8 + (0.3 * k)))))]))],
        });

    public ScatterPlot Momentum
    {
        get
        {
            var random = new Random(3);
            return new ScatterPlot
            {
                Title = "Body mass and speed at ten yards",
                Across = new Axis("body mass", "kg", 1),
                Up = new Axis("speed", "m/s", 2, Better.Higher),
                Points = [.. Enumerable.Range(0, 60).Select(i =>
                {
                    var mass = 82 + (random.NextDouble() * 58);
                    return new ScatterPoint(Player(i), mass, 7.4 - ((mass - 82) * 0.025) + ((random.NextDouble() - 0.5) * 0.8), Typed(mass > 115 ? "Linemen" : mass > 98 ? "Mid-size" : "Backs"), i % 6 == 0);
                })],
                References = [.. new[] { 550, 650, 750 }.Select(p => new Curve(Typed($"{p}\u2009kg\u00b7m/s"), [.. Enumerable.Range(0, 60).Select(i => 75.0 + (i * 1.2)).Select(m => (m, p / m))]))],
            };
        }
    }

    private static readonly DateOnly[] Days = [new(2026, 3, 2), new(2026, 4, 13), new(2026, 5, 11), new(2026, 6, 8)];

    private TrendPanel Trend(string title, Axis axis, double start, double step) => new()
    {
        Title = Typed(title),
        Axis = axis,
        Lines = [new TrendLine(title, [.. Days.Select((d, i) => new TrendPoint(d, start + (step * i), start + (step * i) - Math.Abs(step), start + (step * i) + Math.Abs(step)))])],
    };

    private Curve Curve(string name, double top, double constant, bool band)
    {
        double At(double yards) => top * (1 - Math.Exp(-yards / (6 * constant)));
        var places = Enumerable.Range(0, 41).Select(i => i * 0.5).ToArray();
        return new Curve(Typed(name), [.. places.Select(x => (x, At(x)))])
        {
            Band = band ? [.. places.Select(x => (x, At(x) * 0.97, At(x) * 1.03))] : [],
            Points = band ? [.. new[] { 5.0, 10, 15, 20 }.Select(x => new XyPoint(x, At(x) + (x % 10 == 0 ? 0.1 : -0.08), At(x) - 0.2, At(x) + 0.25))] : [],
        };
    }

    public DataTable Needs => new(
        "First need by player",
        [new("Player"), new("Group"), new("First need"), new("Why"), new("How sure", true, "%")],
        [
            [Typed("Castell"), Typed("Linebacker"), "Early acceleration", new Cell("0.49\u2009s to contact; 10\u2009yd 0.06\u2009s behind group", Typed("squat is 12\u2009% above group")), "93"],
            ["Garrow", "Line", "Maximal strength", new Cell("Squat \u221213\u2009kg since April", "check health first", Tone.Loss), "97"],
            ["Ewart", "Tight end", new Cell(null, "cannot say from two tests"), Cell.Missing, Cell.Missing],
        ]);

    private StripPanel Panel(Random random, int squad, string title, string note, Axis axis, double centre, double spread)
    {
        var groups = Groups.Select((g, k) =>
        {
            var dots = Enumerable.Range(0, squad).Where(i => i % 7 == k)
                .Select(i => new StripDot(Player(i), Math.Round(centre + (spread * ((k - 3) * 0.25 + (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 1.3)), axis.Decimals + 1))).ToArray();
            var sorted = dots.Select(d => d.Value).Order().ToArray();
            return new StripGroup(Typed(g), dots, sorted.Length == 0 ? null : sorted[sorted.Length / 2], sorted.Length == 0 ? null : sorted[sorted.Length / 2] - (spread * 0.3 * (random.NextDouble() - 0.2)));
        });
        return new StripPanel { Title = title, TitleNote = note.Length == 0 ? note : Typed(note), Axis = axis, Groups = [.. groups] };
    }

    private string Typed(string tame) => outside is null ? tame : outside;

    private string Player(int i) => outside is not null ? $"{outside} {i}" : Names[i % Names.Length] + (i >= Names.Length ? " " + (char)('A' + (i / Names.Length)) : string.Empty);

    /// <summary>A page as a notebook output would show the blocks, one after the other.</summary>
    public static string Page(IEnumerable<Block> blocks) =>
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>Gallery</title>"
        + "<style>body{margin:0;background:#fff}main{max-width:1080px;margin:0 auto;padding:28px 20px 60px}@page{margin:14mm}@media print{main{padding:0;max-width:none}}</style></head><body><main>"
        + string.Join('\n', blocks.Select(b => b.ToHtml())) + "</main></body></html>";
}

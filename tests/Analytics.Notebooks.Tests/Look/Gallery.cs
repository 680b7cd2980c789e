using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Charts;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.Tables;

namespace Analytics.Notebooks.Tests.Look;

/// <summary>Every block once, filled with an invented squad: what a person looks at, and what tests take apart.</summary>
internal static class Gallery
{
    private static readonly string[] Names =
    [
        "Aldous", "Brannock", "Castell", "Dray", "Ewart", "Fenner", "Garrow", "Hallam", "Iddon", "Jessop", "Kerridge", "Lorne", "Maddox", "Nairn",
        "Orrell", "Pendry", "Quarles", "Rusk", "Sandal", "Tolley", "Umber", "Varley", "Wex", "Yarrow", "Zeal", "Ashdown", "Birkett", "Corran",
    ];

    private static readonly string[] Groups = ["Line", "Linebacker", "Secondary", "Receiver", "Backfield", "Tight end", "Quarterback"];

    public static IReadOnlyList<Block> Blocks(int squad = 60) =>
    [
        new ReportHead("Testing day, 8 June", "Marlow Quarrymen", "54 of 61 players tested, compared with 13 April"),
        new Answers(
            new Answer("Squats moved; first steps have not yet.", $"Group change {Figures.SignedInterval(7, new(4, 10), 0, "kg")}. Ten-yard time {Figures.SignedInterval(-0.01, new(-0.03, 0.01), 2, "s")}: smaller than we can see with 54 players.", Tone.Gain),
            new Answer("Nine players clearly stronger, one clearly weaker.", "Chance alone would flag about three of 54. Names below.", Tone.Gain),
            new Answer("Linebackers meet contact late.", $"Mean {Figures.Interval(0.47, new(0.45, 0.49), 2, "s")} against 0.40 to 0.45\u2009s. Shin angle at the first step is the likeliest place to look.", Tone.Loss)),
        new Section("Where each group stands", "Every dot is a player. The bar is the group\u2019s middle player today; the ring above it is the middle on 13 April."),
        Strips(squad),
        new Section("Who changed since April: back squat", "The line is the 95\u2009% interval of a player\u2019s own change. A diamond means the change is beyond what our test error explains."),
        Changes(squad),
        new Section("Who needs what next", "Only where the tests can say so; an empty line means they cannot."),
        Needs,
        new Section("What we left out"),
        new Callout("612 rows read, 604 kept, 8 held back.", "sprints.csv line 41: 10-yd time 17.2\u2009s, looks like 1.72", "lifts.csv line 118: 405 typed as kg, looks like lb"),
        new Folded("Six more", new Prose("body.csv line 9: 1085 kg, looks like 108.5")),
        new Cautions("Maximal tests need a warm-up, spotters and a stop rule.", "Momentum is a rough figure, not an injury risk. Head up and out of contact; suspected concussion means out and to medical staff."),
        new Folded("Methods and sources", new Definitions(("Typical error", "From 22 players tested twice within a week; 3.2\u2009kg (2.4 to 4.6)."), ("Clear gain", "The interval of the change lies above zero and above what is too small to matter."))),
        new Definitions(("Notebook", "testing-day.ipynb"), ("Season", "12 files, digest 9f3c0a71d2"), ("Library", "0.1.0")),
    ];

    public static StripPlot Strips(int squad)
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

    public static ChangePlot Changes(int squad, int undecidedShown = 8)
    {
        var random = new Random(7);
        var rows = Enumerable.Range(0, squad).Select(i =>
        {
            var change = Math.Round((random.NextDouble() * 36) - 14, 1);
            var half = 7 + (random.NextDouble() * 4);
            var verdict = change - half > 0 ? ChangeVerdict.ClearGain : change + half < 0 ? ChangeVerdict.ClearLoss : i % 9 == 0 ? ChangeVerdict.TooSmallToMatter : ChangeVerdict.CannotTellYet;
            return new ChangeRow(Player(i), change, change - half, change + half, verdict, Groups[i % 7], verdict is ChangeVerdict.ClearLoss ? "check health first" : string.Empty);
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

    public static DataTable Needs => new(
        "First need by player",
        [new("Player"), new("Group"), new("First need"), new("Why"), new("How sure", true, "%")],
        [
            ["Castell", "Linebacker", "Early acceleration", new Cell("0.49\u2009s to contact; 10\u2009yd 0.06\u2009s behind group", "squat is 12\u2009% above group"), "93"],
            ["Garrow", "Line", "Maximal strength", new Cell("Squat \u221213\u2009kg since April", "check health first", Tone.Loss), "97"],
            ["Ewart", "Tight end", new Cell(null, "cannot say from two tests"), Cell.Missing, Cell.Missing],
        ]);

    private static StripPanel Panel(Random random, int squad, string title, string note, Axis axis, double centre, double spread)
    {
        var groups = Groups.Select((g, k) =>
        {
            var dots = Enumerable.Range(0, squad).Where(i => i % 7 == k)
                .Select(i => new StripDot(Player(i), Math.Round(centre + (spread * ((k - 3) * 0.25 + (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 1.3)), axis.Decimals + 1))).ToArray();
            var sorted = dots.Select(d => d.Value).Order().ToArray();
            return new StripGroup(g, dots, sorted.Length == 0 ? null : sorted[sorted.Length / 2], sorted.Length == 0 ? null : sorted[sorted.Length / 2] - (spread * 0.3 * (random.NextDouble() - 0.2)));
        });
        return new StripPanel { Title = title, TitleNote = note, Axis = axis, Groups = [.. groups] };
    }

    private static string Player(int i) => Names[i % Names.Length] + (i >= Names.Length ? " " + (char)('A' + (i / Names.Length)) : string.Empty);

    /// <summary>A page as a notebook output would show the blocks, one after the other.</summary>
    public static string Page(IEnumerable<Block> blocks) =>
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\"><title>Gallery</title>"
        + "<style>body{margin:0;background:#fff}main{max-width:1080px;margin:0 auto;padding:28px 20px 60px}@page{margin:14mm}@media print{main{padding:0;max-width:none}}</style></head><body><main>"
        + string.Join('\n', blocks.Select(b => b.ToHtml())) + "</main></body></html>";
}

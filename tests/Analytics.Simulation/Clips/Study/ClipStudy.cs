using Analytics.Metrics.Contact;

namespace Analytics.Simulation.Clips.Study;

/// <summary>What the library reads off clips with known truth, case by case.</summary>
public sealed class ClipStudy
{
    private static readonly (string Name, string Unit, int Decimals)[] Names =
    [
        ("time to contact", "s", 4), ("near shin lean at contact", "°", 2), ("trunk lean at contact", "°", 2), ("near knee at contact", "°", 2), ("near shin lean mid-way", "°", 2), ("speed at contact", "m/s", 3),
        ("momentum at contact", "kg·m/s", 2), ("trunk change after contact", "°", 2),
    ];

    private readonly MeasureTally[] tallies = [.. Names.Select(_ => new MeasureTally())];

    private ClipStudy(ClipCase how) => Case = how;

    /// <summary>How the clips were made.</summary>
    public ClipCase Case { get; }

    /// <summary>The figures with their tallies.</summary>
    public IEnumerable<(string Name, string Unit, int Decimals, MeasureTally Tally)> Figures => Names.Zip(tallies, (n, t) => (n.Name, n.Unit, n.Decimals, t));

    /// <summary>The tally of a figure.</summary>
    public MeasureTally this[string name] => tallies[Array.FindIndex(Names, n => n.Name == name)];

    /// <summary>Runs a case.</summary>
    /// <param name="how">The case.</param>
    /// <param name="seed">Seed.</param>
    /// <param name="repetitions">How many.</param>
    public static ClipStudy Run(ClipCase how, ulong seed, int repetitions)
    {
        var study = new ClipStudy(how);
        foreach (var day in Enumerable.Range(0, repetitions).Select(n => FilmedRepetition.Draw(how, seed, n)).Chunk(how.Day))
        {
            var judgement = JudgementError.OfRepeats(day.Select(r => r.Trial));
            foreach (var repetition in day) study.Add(repetition, ContactMeasures.Of(repetition.Trial, judgement, repetition.WeighedMass));
        }
        return study;
    }

    private void Add(FilmedRepetition filmed, ContactMeasures m)
    {
        var (run, contact) = (filmed.Run, filmed.Run.ContactSeconds);
        var posture = m.At(ReviewMoment.Contact);
        tallies[0].Add(m.Time.Estimate, contact);
        tallies[1].Add(posture.ShinLean.Estimate, run.ShinLean(contact));
        tallies[2].Add(posture.TrunkLean.Estimate, run.TrunkLean(contact));
        tallies[3].Add(posture.KneeFlexion.Estimate, run.KneeFlexion(contact));
        tallies[4].Add(m.At(ReviewMoment.MidWay).ShinLean.Estimate, run.ShinLean(contact / 2));
        tallies[5].Add(m.Speed.Estimate, run.SpeedX(contact));
        tallies[6].Add(m.Momentum.Estimate, run.Momentum(contact));
        tallies[7].Add(m.TrunkGive.Estimate, run.TrunkLean(contact + 0.15) - run.TrunkLean(contact));
    }
}

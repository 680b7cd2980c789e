using Analytics.Metrics.Bench;
using Analytics.Metrics.Sketching;
using Analytics.Notebooks.Blocks;
using Analytics.Notebooks.Look;
using Analytics.Notebooks.OnTrial;
using Analytics.Notebooks.TestingDay;

namespace Analytics.Notebooks.Bench;

/// <summary>What can be said of each idea, at the top.</summary>
internal static class BenchAnswers
{
    public static Block Of(BenchContext bench, IReadOnlyList<MetricSketch> sketches)
    {
        if (sketches.Count == 0) return new Answers(new Answer("No idea is on trial.", "Write a sketch in a cell and hand it over.", Tone.Muted));
        return new Together(new Answers(sketches.Select(s => Answer(bench, s, sketches))), TroubleBlock.Of(bench, sketches));
    }

    public static Tone ToneOf(BenchVerdict verdict) => verdict switch
    {
        BenchVerdict.SaysSomethingNew => Tone.Gain,
        BenchVerdict.Noise or BenchVerdict.NothingNew => Tone.Loss,
        _ => Tone.Muted,
    };

    private static Answer Answer(BenchContext bench, MetricSketch sketch, IReadOnlyList<MetricSketch> all)
    {
        if (sketch.Fault is { } fault) return new($"{TrialMark.Name(sketch.Label)}: cannot be used.", fault, Tone.Loss);
        if (TroubleBlock.IsSecond(sketch, all)) return new($"{TrialMark.Name(sketch.Label)}: cannot be used.", TroubleBlock.SameId(sketch), Tone.Loss);
        var card = bench.Card(sketch);
        return new($"{TrialMark.Name(sketch.Label)}: {card.Verdict.Words}.", Words.Signs($"{card.Verdict.Why} Weakest: {Words.List([.. card.Weakest.Select(w => w.What)])}."), ToneOf(card.Verdict.Kind));
    }
}

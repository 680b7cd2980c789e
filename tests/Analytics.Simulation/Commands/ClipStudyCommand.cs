using Analytics.Simulation.Clips.Study;

namespace Analytics.Simulation.Commands;

/// <summary><c>clip-study --out FILE</c>: what figures read off clips with known truth are worth.</summary>
public static class ClipStudyCommand
{
    public const string Usage = "clip-study [--repetitions 2000] [--seed 500] --out FILE      hold figures read off clips against the truth";

    public static int Run(Arguments arguments, TextWriter output)
    {
        var repetitions = (int)arguments.Number("--repetitions", 2000);
        var seed = (ulong)arguments.Number("--seed", 500);
        var path = arguments.Required("--out");
        var studies = ClipCase.All.AsParallel().AsOrdered().Select(c => ClipStudy.Run(c, seed, repetitions)).ToList();
        File.WriteAllText(path, ClipStudyDocument.Of(studies, seed, repetitions));
        output.WriteLine($"{path}: {studies.Count} cases of {repetitions} repetitions.");
        return 0;
    }
}

using Analytics.Simulation.Commands;

try
{
    switch (args.FirstOrDefault())
    {
        case "demo": return DemoCommand.Run(new Arguments(args[1..]), Console.Out);
        case "sprint-starts": return SprintStartsCommand.Run(new Arguments(args[1..]), Console.Out);
        case "error-rates": return ErrorRatesCommand.Run(new Arguments(args[1..]), Console.Out);
        case "clip-study": return ClipStudyCommand.Run(new Arguments(args[1..]), Console.Out);
        case "season-study": return SeasonStudyCommand.Run(new Arguments(args[1..]), Console.Out);
        case "bench-study": return BenchStudyCommand.Run(new Arguments(args[1..]), Console.Out);
        case "week-study": return WeekStudyCommand.Run(new Arguments(args[1..]), Console.Out);
        case "frozen-season": return FrozenSeasonCommand.Run(new Arguments(args[1..]), Console.Out);
        default:
            Console.Error.WriteLine("Commands:");
            Console.Error.WriteLine("  " + DemoCommand.Usage);
            Console.Error.WriteLine("  " + SprintStartsCommand.Usage);
            Console.Error.WriteLine("  " + ErrorRatesCommand.Usage);
            Console.Error.WriteLine("  " + ClipStudyCommand.Usage);
            Console.Error.WriteLine("  " + SeasonStudyCommand.Usage);
            Console.Error.WriteLine("  " + BenchStudyCommand.Usage);
            Console.Error.WriteLine("  " + WeekStudyCommand.Usage);
            Console.Error.WriteLine("  " + FrozenSeasonCommand.Usage);
            return 1;
    }
}
catch (ArgumentException problem)
{
    Console.Error.WriteLine(problem.Message);
    return 1;
}

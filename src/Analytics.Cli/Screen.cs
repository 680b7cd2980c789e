namespace Analytics.Cli;

/// <summary>
/// Where the program writes. Taken once at the start: while a cell runs, the kernel puts its own writers into
/// <see cref="Console"/>, and what the program has to say must not end up among the cell's outputs.
/// </summary>
/// <param name="Out">Results.</param>
/// <param name="Error">Complaints and progress.</param>
/// <param name="IsTerminal">Whether progress may redraw a line.</param>
internal sealed record Screen(TextWriter Out, TextWriter Error, bool IsTerminal)
{
    public static Screen OfConsole()
        => new(Console.Out, Console.Error, !Console.IsErrorRedirected && Environment.GetEnvironmentVariable("TERM") is not "dumb");
}

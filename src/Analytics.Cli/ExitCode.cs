using Analytics.Runner;

namespace Analytics.Cli;

/// <summary>What the program tells the shell.</summary>
internal static class ExitCode
{
    public const int Fine = 0;
    public const int Usage = 1;
    public const int DataOrCell = 2;
    public const int TimeOut = 3;

    /// <summary>By the shells' convention: 128 and the number of the signal.</summary>
    public const int Interrupted = 130;

    public static int Of(Fault fault) => fault == Fault.Usage ? Usage : DataOrCell;
}

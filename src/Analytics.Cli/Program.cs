using Analytics.Cli;

if (args is ["run" or "verify", ..])
    EarlyStart.Begin();
return await CommandLine.RunAsync(args, Screen.OfConsole());

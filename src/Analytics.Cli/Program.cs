using Analytics.Cli;

if (args is ["run", ..])
    EarlyStart.Begin();
return await CommandLine.RunAsync(args, Screen.OfConsole());

using Glazewright.Store.Tests.Databases;

return args is [Writer.Flag, string setting, string job]
    ? await Writer.RunAsync(setting, job)
    : await Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args);

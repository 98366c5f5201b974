return await Sightglass.Cli.CommandLine.RunAsync(args, Console.Out, Console.Error);

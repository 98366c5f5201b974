using System.Collections.Immutable;
using System.CommandLine;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cli.Output;
using Sightglass.Cli.Serving;
using Sightglass.Storage;

namespace Sightglass.Cli.Verbs;

/// <summary>A verb that serves the pages until it is stopped.</summary>
internal abstract class PagesVerb : BookVerb
{
    protected PagesVerb(string name, string description)
        : base(name, description)
    {
        Add(Folder);
        Add(Port);
        Add(Records);
        Add(Data);
    }

    private Option<int?> Port { get; } = new("--port") { Description = $"Port on 127.0.0.1; 0 for any that is free. Default: {PageServer.UsualPort}, or any free one where it is taken." };

    private Option<string?> Records { get; } = new("--records") { Description = "Folder in which sessions are recorded. Default: your own data folder.", HelpName = "FOLDER" };

    private Option<string?> Data { get; } = new("--data") { Description = "Folder in which lessons, questions, photographs and approvals are kept. Default: your own data folder.", HelpName = "FOLDER" };

    protected async Task<int> ServeAsync(ParseResult line, string folder, CancellationToken stop)
    {
        int? port = line.GetValue(Port);
        if (port is < 0 or > 65535)
        {
            return await WrongUse(line, "--port wants 0 to 65535.");
        }

        TextWriter output = line.InvocationConfiguration.Output;
        try
        {
            ImmutableArray<Diagnostic> wrong = await PageServer.ServeAsync(folder, port, line.GetValue(Records), line.GetValue(Data), Say, stop);
            Findings.Print(line.InvocationConfiguration.Error, folder, wrong);
            return wrong.IsEmpty ? ExitCode.Good : ExitCode.No;
        }
        catch (IOException taken) when (port is not null)
        {
            return await WrongUse(line, taken.Message);
        }
        catch (DataFolderException refused)
        {
            return await WrongUse(line, refused.Message);
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            return ExitCode.Good;
        }

        void Say(string address)
        {
            if (line.GetValue(Json))
            {
                Answer.Write(output, new ServingAnswer(address, folder.Replace('\\', '/'), BuildName.Text));
            }
            else
            {
                output.WriteLine($"The pages are at {address} and for this computer only. Ctrl-C ends it.");
            }

            output.Flush();
        }
    }
}

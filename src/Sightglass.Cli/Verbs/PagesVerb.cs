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
        Add(Share);
        Add(SharePort);
    }

    private Option<int?> Port { get; } = new("--port") { Description = $"Port on 127.0.0.1; 0 for any that is free. Default: {PageServer.UsualPort}, or any free one where it is taken." };

    private Option<string?> Records { get; } = new("--records") { Description = "Folder in which sessions are recorded. Default: your own data folder.", HelpName = "FOLDER" };

    private Option<string?> Data { get; } = new("--data") { Description = "Folder in which lessons, questions, photographs and approvals are kept. Default: your own data folder.", HelpName = "FOLDER" };

    private Option<bool> Share { get; } = new("--share") { Description = "Let phones on the same network walk down the machine, paired one by one, answer bets and open papers whose code they read; over HTTPS by a certificate of this computer's own. Nothing else is shared." };

    private Option<int> SharePort { get; } = new("--share-port") { Description = "Port for phones; 0 for any that is free.", DefaultValueFactory = _ => PageServer.UsualSharePort };

    protected async Task<int> ServeAsync(ParseResult line, string folder, CancellationToken stop)
    {
        int? port = line.GetValue(Port);
        int? sharePort = line.GetValue(Share) ? line.GetValue(SharePort) : null;
        if (port is < 0 or > 65535 || sharePort is < 0 or > 65535)
        {
            return await WrongUse(line, "--port and --share-port want 0 to 65535.");
        }

        TextWriter output = line.InvocationConfiguration.Output;
        try
        {
            ImmutableArray<Diagnostic> wrong = await PageServer.ServeAsync(folder, port, line.GetValue(Records), line.GetValue(Data), sharePort, Tell, LeftOut, Say, stop);
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

        void LeftOut(ImmutableArray<Diagnostic> unsaid)
        {
            if (!unsaid.IsEmpty)
            {
                TextWriter error = line.InvocationConfiguration.Error;
                Findings.Print(error, folder == "." ? "" : folder, unsaid);
                error.WriteLine($"What the book says in {string.Join(", ", unsaid.Select(d => Path.GetFileNameWithoutExtension(d.Span.Path)).Distinct(StringComparer.Ordinal))} is left out until this is mended: the pages say it in the book's own language.");
            }
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

        void Tell(ShareTold share)
        {
            TextWriter says = line.GetValue(Json) ? line.InvocationConfiguration.Error : output;
            says.WriteLine(Console.IsOutputRedirected || line.GetValue(Json) ? "" : share.Qr);
            says.WriteLine($"A phone: read the code with its camera, or open {share.Address} and type {share.Code[..4]} {share.Code[4..]}. The code pairs one phone; the page Proposals, Phones shows the next.");
            says.WriteLine($"The certificate is this computer's own. Its SHA-256 fingerprint: {share.Fingerprint}");
            says.Flush();
        }
    }
}

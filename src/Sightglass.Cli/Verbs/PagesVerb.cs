using System.Collections.Immutable;
using System.CommandLine;
using System.Security.Cryptography.X509Certificates;
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
        Add(Room);
        Add(RoomPort);
        Add(RoomCertificate);
    }

    private Option<int?> Port { get; } = new("--port") { Description = $"Port on 127.0.0.1; 0 for any that is free. Default: {PageServer.UsualPort}, or any free one where it is taken." };

    private Option<string?> Records { get; } = new("--records") { Description = "Folder in which sessions are recorded. Default: your own data folder.", HelpName = "FOLDER" };

    private Option<string?> Data { get; } = new("--data") { Description = "Folder in which lessons, questions, photographs and approvals are kept. Default: your own data folder.", HelpName = "FOLDER" };

    private Option<bool> Share { get; } = new("--share") { Description = "Let phones on the same network walk down the machine, paired one by one, answer bets and open papers whose code they read; over HTTPS by a certificate of this computer's own. Nothing else is shared." };

    private Option<int> SharePort { get; } = new("--share-port") { Description = "Port for phones; 0 for any that is free.", DefaultValueFactory = _ => PageServer.UsualSharePort };

    private Option<bool> Room { get; } = new("--room") { Description = "Open the training room to the same network: whoever knows the code, which is said aloud, comes in as a trainee. They reach their drill and nothing else." };

    private Option<int> RoomPort { get; } = new("--room-port") { Description = "Port for trainees; 0 for any that is free.", DefaultValueFactory = _ => PageServer.UsualRoomPort };

    private Option<string?> RoomCertificate { get; } = new("--room-certificate") { Description = "Certificate with its key, .pfx without password or .pem, by which the room's line is secured. Default: it is not, and whoever is on that network could read along.", HelpName = "FILE" };

    protected async Task<int> ServeAsync(ParseResult line, string folder, CancellationToken stop)
    {
        int? port = line.GetValue(Port);
        int? sharePort = line.GetValue(Share) ? line.GetValue(SharePort) : null;
        int? roomPort = line.GetValue(Room) ? line.GetValue(RoomPort) : null;
        if (port is < 0 or > 65535 || sharePort is < 0 or > 65535 || roomPort is < 0 or > 65535)
        {
            return await WrongUse(line, "--port, --share-port and --room-port want 0 to 65535.");
        }

        X509Certificate2? certificate = null;
        if (line.GetValue(RoomCertificate) is { } file && (certificate = CertificateFile.Read(file, out string why)) is null)
        {
            return await WrongUse(line, why);
        }

        TextWriter output = line.InvocationConfiguration.Output;
        try
        {
            ImmutableArray<Diagnostic> wrong = await PageServer.ServeAsync(
                new(folder, port) { Records = line.GetValue(Records), Data = line.GetValue(Data), SharePort = sharePort, RoomPort = roomPort, RoomCertificate = certificate }, new(Say, Tell, LeftOut, TellRoom), stop);
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

        void TellRoom(RoomOpen room)
        {
            TextWriter says = line.GetValue(Json) ? line.InvocationConfiguration.Error : output;
            says.WriteLine($"The room is open. Trainees open {string.Join(" or ", room.Addresses)} and write {room.Code[..3]} {room.Code[3..]}.");
            if (!room.IsSecured)
            {
                says.WriteLine("Its line is not secured: whoever is on that network could read along. Use a network of your own, or --room-certificate.");
            }

            says.Flush();
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

using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Cli.Rules;
using Sightglass.Web.Host;
using Sightglass.Web.Share;

namespace Sightglass.Cli.Serving;

/// <summary>Serves the pages. The only place that touches them, so that the other verbs start without loading a web server.</summary>
internal static class PageServer
{
    /// <summary>Tried first where no port is named; any free one where it is taken.</summary>
    public const int UsualPort = 8217;

    /// <summary>For phones.</summary>
    public const int UsualSharePort = 8218;

    /// <summary>For trainees.</summary>
    public const int UsualRoomPort = 8219;

    /// <param name="asked">What is served, and how; its book folder and port.</param>
    /// <param name="told">Told what is to be shown of it.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <returns>What is wrong with the book.</returns>
    /// <exception cref="IOException">The port named is taken.</exception>
    /// <exception cref="Storage.DataFolderException">The data folder cannot be opened.</exception>
    public static async Task<ImmutableArray<Diagnostic>> ServeAsync(PagesAsked asked, PagesTold told, CancellationToken stop)
    {
        ServeRequest request = new(asked.Folder, asked.Port ?? UsualPort)
        {
            RecordFolder = asked.Records,
            DataFolder = asked.Data,
            RuleFolders = RuleFolderFinder.Find(null),
            SharePort = asked.SharePort,
            Language = Tongue.Spoken.Code,
            Shared = s => told.Shared(Told(s)),
            Unsaid = told.Unsaid,
            RoomPort = asked.RoomPort,
            RoomCertificate = asked.RoomCertificate,
            RoomOpened = r => told.Room(new(r.Addresses, r.Code, r.IsSecured)),
        };
        try
        {
            return await WebHost.ServeAsync(request, told.Serving, stop);
        }
        catch (IOException) when (asked.Port is null)
        {
            return await WebHost.ServeAsync(request with { Port = 0 }, told.Serving, stop);
        }
    }

    private static ShareTold Told(Sharing sharing) => new(sharing.Address!.AbsoluteUri, sharing.Pairing.Code, sharing.Fingerprint, QrPicture.Text(sharing.PairAddress!.AbsoluteUri));
}

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

    /// <param name="folder">The book's.</param>
    /// <param name="port">Null for the usual one, or any free one where that is taken.</param>
    /// <param name="records">Where sessions are recorded; null for the user's own data folder.</param>
    /// <param name="data">Where what is edited is kept; null for the user's own data folder.</param>
    /// <param name="sharePort">Where phones on the network reach the walk-down, 0 for any free one; null to share nothing.</param>
    /// <param name="shared">Told how a phone is paired, and again with every new code.</param>
    /// <param name="unsaid">Told what is wrong with what the book says in other languages.</param>
    /// <param name="serving">Told the address.</param>
    /// <param name="stop">Asks to stop.</param>
    /// <returns>What is wrong with the book.</returns>
    /// <exception cref="IOException">The port named is taken.</exception>
    /// <exception cref="Storage.DataFolderException">The data folder cannot be opened.</exception>
    public static async Task<ImmutableArray<Diagnostic>> ServeAsync(string folder, int? port, string? records, string? data, int? sharePort, Action<ShareTold> shared, Action<ImmutableArray<Diagnostic>> unsaid, Action<string> serving, CancellationToken stop)
    {
        ServeRequest request = new(folder, port ?? UsualPort) { RecordFolder = records, DataFolder = data, RuleFolders = RuleFolderFinder.Find(null), SharePort = sharePort, Language = Tongue.Spoken.Code, Shared = s => shared(Told(s)), Unsaid = unsaid };
        try
        {
            return await WebHost.ServeAsync(request, serving, stop);
        }
        catch (IOException) when (port is null)
        {
            return await WebHost.ServeAsync(request with { Port = 0 }, serving, stop);
        }
    }

    private static ShareTold Told(Sharing sharing) => new(sharing.Address!.AbsoluteUri, sharing.Pairing.Code, sharing.Fingerprint, QrPicture.Text(sharing.PairAddress!.AbsoluteUri));
}

using System.Collections.Immutable;
using System.Security.Cryptography.X509Certificates;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Language;
using Sightglass.Web.Room;
using Sightglass.Web.Share;

namespace Sightglass.Web.Host;

/// <summary>What is served, and where it keeps what it is told.</summary>
/// <param name="BookFolder">The book's folder.</param>
/// <param name="Port">0 for any that is free.</param>
public sealed record ServeRequest(string BookFolder, int Port)
{
    /// <summary>Where sessions are recorded; null to keep nothing.</summary>
    public string? RecordFolder { get; init; }

    /// <summary>Where what is edited is kept; null for a folder that goes when the pages end.</summary>
    public string? DataFolder { get; init; }

    /// <summary>Sets of published rules that the book is held against.</summary>
    public IReadOnlyList<string> RuleFolders { get; init; } = [];

    /// <summary>Port on which phones on the same network reach the walk-down, 0 for any that is free; null, and nothing listens beyond this computer.</summary>
    public int? SharePort { get; init; }

    /// <summary>Port on which trainees on the same network reach their pages, 0 for any that is free; null, and nothing of the room listens beyond this computer.</summary>
    public int? RoomPort { get; init; }

    /// <summary>What the room's line is secured with; null: everybody on that network could read along.</summary>
    public X509Certificate2? RoomCertificate { get; init; }

    /// <summary>Told when trainees can come in.</summary>
    public Action<RoomTold>? RoomOpened { get; init; }

    /// <summary>Told when phones can be paired, and again with every new code.</summary>
    public Action<Sharing>? Shared { get; init; }

    /// <summary>Told, before anything is served, the errors of the book's languages: what it says in one that has some is left out.</summary>
    public Action<ImmutableArray<Diagnostic>>? Unsaid { get; init; }

    /// <summary>Code of the language of a browser that has chosen none.</summary>
    public string Language { get; init; } = Tongue.Usual.Code;

    /// <summary>Languages that a browser may choose among.</summary>
    public ImmutableArray<Tongue> Tongues { get; init; } = Tongue.All;

    /// <summary>The clock on the wall.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;
}

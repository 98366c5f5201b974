using System.Security.Cryptography.X509Certificates;

namespace Sightglass.Cli.Serving;

/// <summary>What is to be served.</summary>
/// <param name="Folder">The book's.</param>
/// <param name="Port">Null for the usual one, or any free one where that is taken.</param>
internal sealed record PagesAsked(string Folder, int? Port)
{
    /// <summary>Where sessions are recorded; null for the user's own data folder.</summary>
    public string? Records { get; init; }

    /// <summary>Where what is edited is kept; null for the user's own data folder.</summary>
    public string? Data { get; init; }

    /// <summary>Where phones on the network reach the walk-down, 0 for any free one; null to share nothing.</summary>
    public int? SharePort { get; init; }

    /// <summary>Where trainees on the network reach their pages, 0 for any free one; null: from nowhere.</summary>
    public int? RoomPort { get; init; }

    /// <summary>What their line is secured with, or null.</summary>
    public X509Certificate2? RoomCertificate { get; init; }
}

namespace Sightglass.Web.Share;

/// <summary>Whether the walk-down is shared, for pages to ask; it goes with them.</summary>
/// <param name="Sharing">Null where nothing listens beyond this computer.</param>
public sealed record ShareDesk(Sharing? Sharing) : IDisposable
{
    public void Dispose() => Sharing?.Dispose();
}

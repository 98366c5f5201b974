namespace Sightglass.Web.Share;

/// <summary>Marks a connection that came over the network.</summary>
internal sealed class SharedLine;

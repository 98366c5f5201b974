namespace Sightglass.Web.Live;

/// <summary>A fault that is there.</summary>
public sealed record PresentFault(string Item, string Fault);

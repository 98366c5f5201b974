namespace Sightglass.Book.Model;

/// <summary>Depth of text: what to know, to operate, to repair.</summary>
public sealed record DepthTexts(string Know, string Operate, string Repair);

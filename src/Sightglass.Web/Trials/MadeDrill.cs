namespace Sightglass.Web.Trials;

/// <summary>What came of making a drill.</summary>
/// <param name="Name">The drill's.</param>
/// <param name="Says">Where it is, or why it is nowhere.</param>
/// <param name="Text">What was written, or would have been.</param>
/// <param name="IsIn">Whether it is in the book.</param>
internal sealed record MadeDrill(string Name, string Says, string Text, bool IsIn);

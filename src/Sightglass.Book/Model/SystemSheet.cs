using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>A running system: fuel, air, …</summary>
public sealed record SystemSheet(string Name, Span Span, string Medium, bool Alive, string Text);

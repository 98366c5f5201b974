using Sightglass.Basics.Diagnostics;

namespace Sightglass.Book.Model;

/// <summary>What a person may be asked in front of an item, and what a good answer says.</summary>
public sealed record Question(string Asked, string Answer, Span Span);

using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>A gap as read.</summary>
internal readonly record struct Filled(Slot Slot, int Issues, bool IsOpen = false);

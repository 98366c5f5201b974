using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>What holds if this is the item within reach.</summary>
public sealed record ReachCase(Item Item, Condition Condition);

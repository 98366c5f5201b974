using Sightglass.Book.Kinds;

namespace Sightglass.Plant.Kinds.Common;

/// <summary>Anything that is described and not computed.</summary>
public sealed class DescribedKind : KindBuilder
{
    public override KindSheet Sheet { get; } = new()
    {
        Name = "described",
        Purpose = "Anything that has a place and a text, and no part in the physics.",
    };
}

using System.Runtime.CompilerServices;

namespace Sightglass.Network.Laws.Common;

/// <summary>A few values in a row on the stack, for a law that calls another one.</summary>
[InlineArray(Length)]
public struct Row<T>
    where T : struct
{
    /// <summary>As many potentials as a law may see.</summary>
    public const int Length = 6;

    private T _first;
}

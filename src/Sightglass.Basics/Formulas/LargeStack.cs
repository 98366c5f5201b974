using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Formulas;

/// <summary>Room for the deepest formula the parser lets pass.</summary>
[InlineArray(Size)]
internal struct LargeStack<T>
{
    public const int Size = 64;

    private T _first;
}

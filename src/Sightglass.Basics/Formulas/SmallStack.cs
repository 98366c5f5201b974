using System.Runtime.CompilerServices;

namespace Sightglass.Basics.Formulas;

/// <summary>Room for the evaluation of ordinary formulas.</summary>
[InlineArray(Size)]
internal struct SmallStack<T>
{
    public const int Size = 8;

    private T _first;
}

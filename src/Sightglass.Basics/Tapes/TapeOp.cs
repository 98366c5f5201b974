namespace Sightglass.Basics.Tapes;

/// <summary>What a step of a tape does: the operations of <see cref="Numbers.IReal{T}"/>.</summary>
internal enum TapeOp : byte
{
    /// <summary>Holds what it is given.</summary>
    Leaf,

    /// <summary>The same number always.</summary>
    Constant,

    Add,
    Subtract,
    Multiply,
    Divide,
    Negate,
    Sqrt,
    Abs,
    Fma,
    Min,
    Max,
    Less,
    LessOrEqual,
    Select,
    And,
    Or,
    Floor,
    CbrtSeed,
    ScaleByPowerOfTwo,
    ExponentOf,
    SignificandOf,

    /// <summary>A number of a table, by the first operand.</summary>
    Lookup,
}

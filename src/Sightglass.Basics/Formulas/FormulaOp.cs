namespace Sightglass.Basics.Formulas;

/// <summary>Steps of the postfix program. Those above <see cref="Name"/> take operands from the stack.</summary>
internal enum FormulaOp : byte
{
    Constant,
    Name,
    Negate,
    Abs,
    Add,
    Subtract,
    Multiply,
    Divide,
    Min,
    Max,
    Less,
    LessOrEqual,
    Greater,
    GreaterOrEqual,
    And,
    Or,
    Not,
}

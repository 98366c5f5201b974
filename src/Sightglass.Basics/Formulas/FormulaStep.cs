namespace Sightglass.Basics.Formulas;

/// <summary>One step of the postfix program: what to do, and for constants and names which.</summary>
internal readonly record struct FormulaStep(FormulaOp Op, int Index = 0)
{
    /// <summary>How many operands the step takes from the stack.</summary>
    public int Takes => Op switch
    {
        FormulaOp.Constant or FormulaOp.Name => 0,
        FormulaOp.Negate or FormulaOp.Abs or FormulaOp.Not => 1,
        _ => 2,
    };
}

namespace Sightglass.Basics.Formulas;

/// <summary>Takes the steps of a formula in postfix order as they are read.</summary>
internal sealed class FormulaProgramBuilder
{
    private readonly List<FormulaStep> _steps = [];
    private readonly List<FormulaLiteral> _literals = [];
    private readonly List<FormulaName> _names = [];
    private readonly Dictionary<string, int> _indexOfName = new(StringComparer.Ordinal);
    private int _depth;

    /// <summary>The most operands that wait at once.</summary>
    public int MaximumDepth { get; private set; }

    public void Literal(FormulaLiteral literal)
    {
        Add(new(FormulaOp.Constant, _literals.Count));
        _literals.Add(literal);
    }

    public void Name(in FormulaName name)
    {
        if (!_indexOfName.TryGetValue(name.Name, out int index))
        {
            index = _names.Count;
            _indexOfName.Add(name.Name, index);
            _names.Add(name);
        }

        Add(new(FormulaOp.Name, index));
    }

    public void Operation(FormulaOp op) => Add(new(op));

    public FormulaProgram Build() => new([.. _steps], [.. _literals], [.. _names], MaximumDepth);

    private void Add(FormulaStep step)
    {
        _steps.Add(step);
        _depth += 1 - step.Takes;
        MaximumDepth = Math.Max(MaximumDepth, _depth);
    }
}

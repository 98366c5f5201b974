using System.Collections.Immutable;

namespace Sightglass.Basics.Formulas;

/// <summary>What a parsed formula runs: postfix steps, the literals and names they refer to, and the stack they need.</summary>
internal sealed record FormulaProgram(FormulaStep[] Steps, FormulaLiteral[] Literals, ImmutableArray<FormulaName> Names, int Depth);

using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A formula that may ask which faults are in.</summary>
/// <param name="formula">Read in <paramref name="scope"/>.</param>
/// <param name="scope">Of the plan by which it is evaluated.</param>
public sealed class TruthSignal(Formula formula, TruthScope scope) : Signal
{
    public override Lanes Evaluate(LaneBank bank)
    {
        TruthValues values = new(bank, scope.Signals);
        return formula.Evaluate<Lanes, TruthValues>(ref values);
    }

    public override void TellReads(SignalReads reads)
    {
        ArgumentNullException.ThrowIfNull(reads);
        foreach (FormulaName name in formula.NamesUsed)
        {
            reads.Add(scope.Signals[name.Id]);
        }
    }

    private readonly struct TruthValues(LaneBank bank, IReadOnlyList<Signal> signals) : IFormulaValues<Lanes>
    {
        public Lanes ValueOf(int id) => signals[id].Evaluate(bank);
    }
}

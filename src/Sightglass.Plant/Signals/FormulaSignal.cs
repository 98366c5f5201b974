using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Tapes;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>A formula of other signals, whose names carry the numbers of those signals.</summary>
public sealed class FormulaSignal(Formula formula) : Signal
{
    public Formula Formula { get; } = formula;

    public override Lanes Evaluate(LaneBank bank)
    {
        BankValues values = new(bank);
        return Formula.Evaluate<Lanes, BankValues>(ref values);
    }

    public override Noted Note(SignalNotes notes)
    {
        NotedValues values = new(notes);
        return Formula.Evaluate<Noted, NotedValues>(ref values);
    }

    public override void TellReads(SignalReads reads)
    {
        foreach (FormulaName name in Formula.NamesUsed)
        {
            reads.AddNamed(name.Id);
        }
    }
}

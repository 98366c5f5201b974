using Sightglass.Basics.Formulas;
using Sightglass.Basics.Numbers;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Signals;

/// <summary>Hands a formula the signals of a bank by number.</summary>
public readonly struct BankValues(LaneBank bank) : IFormulaValues<Lanes>
{
    public Lanes ValueOf(int id) => bank.Plan.Signals[id].Evaluate(bank);
}

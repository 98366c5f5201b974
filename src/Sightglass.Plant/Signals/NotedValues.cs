using Sightglass.Basics.Formulas;
using Sightglass.Basics.Tapes;

namespace Sightglass.Plant.Signals;

/// <summary>Hands a formula that is taken down the signals of its names.</summary>
internal readonly struct NotedValues(SignalNotes notes) : IFormulaValues<Noted>
{
    public Noted ValueOf(int id) => notes.Named(id);
}

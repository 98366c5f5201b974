using Sightglass.Basics.Time;

namespace Sightglass.World.Agenda;

/// <summary>One thing that will happen; ties are broken by kind, then by number.</summary>
/// <param name="Time">When.</param>
/// <param name="Kind">What sort.</param>
/// <param name="Id">Which fault, action, person or sample.</param>
public readonly record struct AgendaEntry(SimTime Time, AgendaKind Kind, int Id) : IComparable<AgendaEntry>
{
    public int CompareTo(AgendaEntry other)
    {
        int byTime = Time.CompareTo(other.Time);
        int byKind = byTime != 0 ? byTime : ((int)Kind).CompareTo((int)other.Kind);
        return byKind != 0 ? byKind : Id.CompareTo(other.Id);
    }
}

using Sightglass.Basics.Formulas;
using Sightglass.Book.Model;

namespace Sightglass.Plant.Plans;

/// <summary>The names of a plan as one vehicle of a train says them: its own first, then those of the whole.</summary>
public sealed class VehicleScope(Vehicle vehicle, INameScope whole) : INameScope
{
    public IEnumerable<string> Names => whole.Names;

    /// <summary>The scope for a vehicle; the whole's for the machine that the book is about.</summary>
    public static INameScope Of(Vehicle vehicle, INameScope whole)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return vehicle.IsTheMachine ? whole : new VehicleScope(vehicle, whole);
    }

    /// <summary>As said of this vehicle a name may be longer than as the whole knows it.</summary>
    public int LongestName => whole.LongestName + Vehicle.ThisCar.Length;

    public bool TryGet(string name, out FormulaName found) => whole.TryGet(vehicle.NameOf(name), out found) || whole.TryGet(name, out found);
}

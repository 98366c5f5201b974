namespace Sightglass.Web.Live;

/// <summary>A fault that is there.</summary>
public sealed record PresentFault(string Item, string Fault)
{
    /// <summary>All that are there now. Only with the machine in view.</summary>
    public static IEnumerable<PresentFault> Of(World.World world)
    {
        ArgumentNullException.ThrowIfNull(world);
        return from item in world.Plan.Items.Values
               from fault in item.Faults
               where fault.Value.Length > 0 && world.GetSlot(fault.Value[0].Slot) != 0
               select new PresentFault(item.Item.Name, fault.Key);
    }
}

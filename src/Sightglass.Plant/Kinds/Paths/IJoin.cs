using Sightglass.Book.Model;
using Sightglass.Plant.Plans;

namespace Sightglass.Plant.Kinds.Paths;

/// <summary>Builds the paths that every fluid has, by the laws of one fluid.</summary>
internal interface IJoin
{
    /// <summary>An opening between the item's two ends that stands open by a share, 0…1.</summary>
    void Opening(PlanBuilder plan, Item item, SlotFunction share);

    /// <summary>An opening that its pressure difference opens, one way.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The path.</param>
    /// <param name="opensAt">Pa at which it begins to open.</param>
    /// <param name="width">Pa from there to fully open.</param>
    /// <param name="lifts">0 = stuck shut, 1 = free.</param>
    /// <param name="passes">Share of the opening that stays open whatever the pressures, 0…1.</param>
    void CheckValve(PlanBuilder plan, Item item, double opensAt, double width, SlotFunction lifts, SlotFunction passes);

    /// <summary>A line with friction.</summary>
    void Pipe(PlanBuilder plan, Item item);

    /// <summary>A resistance given by one flow and its pressure drop.</summary>
    /// <param name="plan">Where it is built.</param>
    /// <param name="item">The path.</param>
    /// <param name="dirt">Drop over the clean drop, less one.</param>
    void Filter(PlanBuilder plan, Item item, SlotFunction dirt);
}

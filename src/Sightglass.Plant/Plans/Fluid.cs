namespace Sightglass.Plant.Plans;

/// <summary>What a store holds.</summary>
public enum Fluid
{
    /// <summary>A liquid, perhaps with air beside it.</summary>
    Liquid,

    /// <summary>Air.</summary>
    Gas,

    /// <summary>Electric charge.</summary>
    Charge,

    /// <summary>Heat.</summary>
    Heat,
}

using Sightglass.Basics.Quantities;

namespace Sightglass.Plant.Calculators.Sheets;

/// <summary>Which unit stands for which on the other side of the border: of about the same size, as people there would choose it.</summary>
public static class UnitPairs
{
    private static readonly (string Si, string Us)[] s_pairs =
    [
        ("mm", "in"), ("cm", "in"), ("m", "ft"), ("km", "mi"), ("m", "yd"),
        ("L", "US gal"), ("m^3", "ft^3"),
        ("t", "short ton"), ("kg", "lb"),
        ("kPa", "psi"), ("bar", "psi"), ("MPa", "psi"),
        ("km/h", "mph"), ("m/s", "ft/s"), ("m/s^2", "mph/s"),
        ("L/min", "US gal/min"), ("L/h", "US gal/h"), ("L/s", "ft^3/min"), ("m^3/h", "ft^3/min"),
        ("kg/h", "lb/h"), ("kg/m^3", "lb/ft^3"),
        ("kW", "hp"), ("kN", "lbf"), ("N", "lbf"), ("kN/mm", "lbf/in"),
    ];

    /// <summary>The unit for a system; itself where it belongs to it or to both.</summary>
    /// <param name="unit">Any.</param>
    /// <param name="system">Null leaves every unit as it is.</param>
    public static Unit In(Unit unit, UnitSystem? system)
    {
        ArgumentNullException.ThrowIfNull(unit);
        string? other = system switch
        {
            UnitSystem.Us => s_pairs.FirstOrDefault(p => p.Si == unit.Symbol).Us,
            UnitSystem.Si => s_pairs.FirstOrDefault(p => p.Us == unit.Symbol).Si,
            _ => null,
        };
        return other is null ? unit : UnitTable.Get(other);
    }

    /// <summary>The unit on the other side, or null for one that both know.</summary>
    public static Unit? Other(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        Unit us = In(unit, UnitSystem.Us), si = In(unit, UnitSystem.Si);
        return us != unit ? us : si != unit ? si : null;
    }
}

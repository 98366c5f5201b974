namespace Sightglass.Basics.Quantities;

/// <summary>Units that the code itself speaks of.</summary>
internal static class Units
{
    public static readonly Unit Psi = UnitTable.Get("psi");
    public static readonly Unit Kilopascal = UnitTable.Get("kPa");
    public static readonly Unit Kelvin = UnitTable.Get("K");
    public static readonly Unit DegreeCelsius = UnitTable.Get("degC");
    public static readonly Unit DegreeFahrenheit = UnitTable.Get("degF");
    public static readonly Unit Litre = UnitTable.Get("L");
    public static readonly Unit UsGallon = UnitTable.Get("US gal");
    public static readonly Unit Metre = UnitTable.Get("m");
    public static readonly Unit Millimetre = UnitTable.Get("mm");
    public static readonly Unit Inch = UnitTable.Get("in");
    public static readonly Unit Foot = UnitTable.Get("ft");
    public static readonly Unit Kilogram = UnitTable.Get("kg");
    public static readonly Unit Pound = UnitTable.Get("lb");
    public static readonly Unit Tonne = UnitTable.Get("t");
    public static readonly Unit ShortTon = UnitTable.Get("short ton");
}

using Sightglass.Basics.Formulas;
using Sightglass.Basics.Quantities;

namespace Sightglass.Basics.Tests.Formulas;

/// <summary>The names that the tests' formulas use.</summary>
internal static class Scopes
{
    public static NameTable Fuel()
    {
        NameTable names = new();
        names.AddValue("volume of forward compartment", Dimension.Volume);
        names.AddValue("volume of centre compartment", Dimension.Volume);
        names.AddValue("forward sight glass, right", Dimension.Metre);
        names.AddValue("forward sight glass", Dimension.Metre);
        names.AddValue("pressure of fuel header", Dimension.Pressure);
        names.AddValue("head-end load", Dimension.Power);
        names.AddValue("temperature of cooling water", Dimension.Kelvin);
        names.AddValue("ambient temperature", Dimension.Kelvin);
        names.AddValue("leak flow of aft compartment", Dimension.VolumeFlow);
        names.AddValue("fill", Dimension.One);
        names.AddValue("level", Dimension.One);
        names.AddValue("stop and proceed counter", Dimension.One);
        names.AddValue("27-point control", Dimension.One);
        names.AddCondition("engine runs");
        names.AddCondition("running of engine");
        return names;
    }
}

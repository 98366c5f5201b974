namespace Sightglass.Basics.Quantities;

/// <summary>Keeps what is not a finite number out of typed values.</summary>
internal static class NotANumber
{
    public static double Refuse(double value, string name) =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "Must be a finite number.");
}

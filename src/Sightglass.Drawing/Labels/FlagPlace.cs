namespace Sightglass.Drawing.Labels;

/// <summary>Where a flag was put.</summary>
/// <param name="Pole">X of the pole, moved a little where poles were too close.</param>
/// <param name="Left">Left edge of the flag.</param>
/// <param name="Right">Right edge of the flag.</param>
/// <param name="Tier">0 is next to the machine.</param>
public readonly record struct FlagPlace(double Pole, double Left, double Right, int Tier, FlagDirection Direction);

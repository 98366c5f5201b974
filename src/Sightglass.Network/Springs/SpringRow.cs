namespace Sightglass.Network.Springs;

/// <param name="Lower">Body that it stands on; −1 for the ground.</param>
/// <param name="Stiffness">N/m.</param>
/// <param name="Pulls">Whether it can pull.</param>
/// <param name="Factor">Input that its stiffness is multiplied by; −1 for none.</param>
/// <param name="Gap">Input with the m that its bodies come together before it carries; −1 for none.</param>
internal readonly record struct SpringRow(string Name, int Upper, int Lower, double X, double Y, double Stiffness, bool Pulls, int Factor, int Gap);

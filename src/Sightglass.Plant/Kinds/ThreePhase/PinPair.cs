namespace Sightglass.Plant.Kinds.ThreePhase;

/// <summary>One wire of a jumper.</summary>
/// <param name="Pin">At its first end.</param>
/// <param name="Wire">That it is there.</param>
/// <param name="OtherPin">At its second end.</param>
/// <param name="OtherWire">That it is there.</param>
/// <param name="IsBus">Whether it is three phases.</param>
internal sealed record PinPair(int Pin, string Wire, int OtherPin, string OtherWire, bool IsBus);

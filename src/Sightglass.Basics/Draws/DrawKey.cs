namespace Sightglass.Basics.Draws;

/// <summary>The name of a drawn value, hashed once so that drawing it costs no text.</summary>
public readonly record struct DrawKey(ulong Hash)
{
    public static DrawKey Of(string name) => new(NameHash.Of(name));

    /// <summary>The key of one of several values drawn under the same name.</summary>
    public DrawKey At(int index) => new((Hash ^ (ulong)(uint)index) * 0x00000100000001B3);
}

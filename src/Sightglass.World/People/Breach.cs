namespace Sightglass.World.People;

/// <summary>What somebody did without being allowed to.</summary>
public enum Breach
{
    None,

    /// <summary>Operated what their role may not.</summary>
    MayNot,

    /// <summary>Operated without the permission that it needs.</summary>
    NotPermitted,

    /// <summary>Took away what others had set.</summary>
    RemovedByAnother,
}

namespace Sightglass.Book.Model;

/// <summary>How somebody comes by a protection.</summary>
public enum ProtectionSort
{
    /// <summary>A role grants it; whoever asked holds it and gives it back.</summary>
    Asked,

    /// <summary>It is set at places (signals), and protects all who are there once it stands at each of them. The group that set it removes it.</summary>
    SetAt,

    /// <summary>Items are locked and tagged; it protects the one who hung a lock on each of them, and nobody else removes that.</summary>
    Locks,

    /// <summary>One of its items is chocked; it protects all. The group that set the chock removes it.</summary>
    Chocks,
}

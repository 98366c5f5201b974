namespace Sightglass.Paper.Document;

/// <summary>What sort of paper it is: decides sizes of type and furniture.</summary>
public enum PaperLook
{
    /// <summary>A sheet to read from or to hand out.</summary>
    Sheet,

    /// <summary>For the pocket: small, close.</summary>
    Pocket,

    /// <summary>One sheet that holds all there is to know of something: close, everything at a glance.</summary>
    Dense,

    /// <summary>For a wall: one large drawing.</summary>
    Poster,
}

namespace Sightglass.Drawing.Lanes;

/// <summary>Sorts of act.</summary>
public enum LaneMarkShape
{
    /// <summary>Something was said or asked: a ring.</summary>
    Said,

    /// <summary>A hand was put to something: a square.</summary>
    Touched,

    /// <summary>Something that fails: a crossed diamond.</summary>
    Broken,

    /// <summary>A moment that was marked: a small flag.</summary>
    Bookmark,
}

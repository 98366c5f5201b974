namespace Sightglass.Drawing.Timelines;

/// <summary>How what happens is drawn: by shape first, colour only for what is broken and for the truth.</summary>
public enum TimelineMarkSort
{
    /// <summary>A filled square: a hand put to something.</summary>
    Act,

    /// <summary>An open circle: something said or told.</summary>
    Said,

    /// <summary>A filled triangle: a report, a hint, being done.</summary>
    Word,

    /// <summary>A hollow diamond in the colour of truth.</summary>
    Truth,

    /// <summary>A filled diamond in the colour of what is broken.</summary>
    Broken,

    /// <summary>A small flag: a moment that was marked.</summary>
    Bookmark,

    /// <summary>An upright stroke: something came to be so.</summary>
    Reached,

    /// <summary>A cross: something was lost again.</summary>
    Lost,
}

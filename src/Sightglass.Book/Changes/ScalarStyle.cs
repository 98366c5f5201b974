namespace Sightglass.Book.Changes;

/// <summary>How an author wrote a text.</summary>
internal enum ScalarStyle
{
    Plain,
    Single,
    Double,

    /// <summary>A block, folded (<c>&gt;</c>) or line by line (<c>|</c>).</summary>
    Block,
}

namespace Sightglass.Web.Recordings;

/// <summary>What somebody says of a drill that is to start from a recording, as it is typed.</summary>
/// <param name="Title">Of the drill.</param>
/// <param name="Card">The card that solves it, by its file.</param>
/// <param name="From">The first moment; empty: the recording's beginning.</param>
/// <param name="To">The last moment; empty: its end.</param>
/// <param name="Every">At least so long between two rows; empty: every row.</param>
public sealed record DrillAsk(string Title, string Card, string From, string To, string Every);

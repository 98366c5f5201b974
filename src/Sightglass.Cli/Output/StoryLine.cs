using Sightglass.World.Journal;

namespace Sightglass.Cli.Output;

/// <summary>A line of a story: the clock, the step, what happened; steps of a card that was called stand further in.</summary>
internal static class StoryLine
{
    public static string Text(JournalEntry entry) =>
        $"{Clock.Text(entry.Time),9}  {new string(' ', 4 * entry.Depth)}{(entry.Step > 0 ? $"{entry.Step}." : ""),-4}{entry.Text}";
}

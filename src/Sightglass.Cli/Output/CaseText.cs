using Sightglass.Cli.Tries;
using Sightglass.Trials.Sweep;
using Sightglass.Trials.Tries;
using Sightglass.World.Journal;

namespace Sightglass.Cli.Output;

/// <summary>One case as a story for a terminal.</summary>
internal static class CaseText
{
    public static void Print(TextWriter output, TryRequest request, CaseStory story, int number)
    {
        output.WriteLine($"{request.Card.Title}: case {number} of `{request.Setup.Situation.Name}`{(story.Number is null ? "" : $", road number {story.Number}")}, seed {request.Options.Seed}");
        foreach ((string name, string value) in story.Values)
        {
            output.WriteLine($"  {name}: {value}");
        }

        foreach (JournalEntry entry in story.Journal)
        {
            output.WriteLine(StoryLine.Text(entry));
        }

        output.WriteLine($"  hash {story.Outcome.Hash:x16}; {BuildName.Text}");
        output.WriteLine();
    }
}

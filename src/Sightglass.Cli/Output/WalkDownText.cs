using Sightglass.Training.WalkDowns;

namespace Sightglass.Cli.Output;

/// <summary>What was found on walk-downs, for people: what departs from the book first.</summary>
internal static class WalkDownText
{
    public static string Words(FoundState state) => state switch { FoundState.NotSeen => "not seen", FoundState.Differs => "differs", _ => "seen" };

    public static void Print(TextWriter output, IReadOnlyList<WalkDownEntry> all)
    {
        if (all.Count == 0)
        {
            output.WriteLine("Nothing has been found yet. 'sightglass walkdown --html FILE' writes a walk-down for a phone.");
            return;
        }

        foreach (IGrouping<string?, WalkDownEntry> machine in all.GroupBy(e => e.RoadNumber))
        {
            output.WriteLine($"{machine.Key ?? "road number not known"}: {machine.Count(e => e.State == FoundState.Seen)} as described, {machine.Count(e => e.State == FoundState.Differs)} not as described, {machine.Count(e => e.State == FoundState.NotSeen)} not seen");
            foreach (WalkDownEntry e in machine.Where(e => e.State != FoundState.Seen || e.Label is not null || e.Note is not null || e.OpensTowards is not null))
            {
                string[] says =
                [
                    Words(e.State), e.Label is { } label ? $"label ‘{label}’" : "", e.OpensTowards is { } open ? $"open: {open}" : "",
                    e.Note ?? "", e.Photo is not null ? "photo" : "", e.Voice is not null ? "voice" : "", e.By,
                ];
                output.WriteLine($"   {e.Item ?? e.Place} ({e.Place}): {string.Join("; ", says.Where(s => s.Length > 0))}");
            }
        }
    }
}

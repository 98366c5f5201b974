namespace Sightglass.Cli.Output;

/// <summary>Proposals for people: a line each, and the one that is shown with its diff.</summary>
internal static class ProposalsText
{
    public static void Print(TextWriter output, ProposalsAnswer answer, string act)
    {
        if (answer.Proposals.Count == 0)
        {
            output.WriteLine("No proposal is open.");
        }

        foreach (ProposalsAnswer.Row p in answer.Proposals)
        {
            string where = p.RoadNumber is { } number ? $" on {number}" : "";
            string state = p.State == "open" ? "" : $" [{p.State}{(p.DecidedBy is { Length: > 0 } who ? $" by {who}" : "")}{(p.DecidedWhy is { } why ? $": {why}" : "")}]";
            output.WriteLine($"{p.Number}. {p.Target}{where}, {p.Property}: {Short(p.Edited ?? p.Becomes)}{(p.Edited is null ? "" : " (edited)")}{state}");
            if (act == "show")
            {
                output.WriteLine($"   {p.Why}");
                output.WriteLine();
                output.WriteLine(p.Diff ?? $"   It cannot be made as it stands: {p.Refused}");
            }
        }

        if (act == "list" && answer.Proposals.Count > 0)
        {
            output.WriteLine("'proposals show N' shows one as a diff; 'accept N' and 'refuse N --why TEXT' decide it.");
        }
    }

    private static string Short(string text) => text.ReplaceLineEndings(" ") is var line && line.Length > 90 ? line[..90] + "…" : line;
}

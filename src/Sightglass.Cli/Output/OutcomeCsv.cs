using System.Globalization;
using System.Text;
using Sightglass.Cli.Tries;
using Sightglass.Trials.Tries;
using Sightglass.World.Runs;

namespace Sightglass.Cli.Output;

/// <summary>Every case of trials that was run, as comma-separated values.</summary>
internal static class OutcomeCsv
{
    public static string Of(IEnumerable<TryResult> results)
    {
        StringBuilder text = new("situation,case,road_number,outcome,mechanism,step,end_s,hash\n");
        foreach (TryResult result in results)
        {
            for (int i = 0; i < result.Trial.Outcomes.Length; i++)
            {
                Outcome o = result.Trial.Outcomes[i];
                if (o.Kind == OutcomeKind.Running)
                {
                    continue;
                }

                text.Append(CultureInfo.InvariantCulture, $"{Quoted(result.Trial.Setup.Situation.Name)},{result.Trial.FirstCase + i},{Quoted(result.Trial.NumberOf(i) ?? "")},");
                text.Append(CultureInfo.InvariantCulture, $"{o.Kind.ToString().ToLowerInvariant()},{Quoted(o.Mechanism ?? "")},{o.Step},{o.Time.Seconds:R},{o.Hash:x16}\n");
            }
        }

        return text.ToString();
    }

    private static string Quoted(string text) => $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}

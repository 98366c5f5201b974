using Sightglass.Basics.Quantities;
using Sightglass.Basics.Time;
using Sightglass.Cli.Runs;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Rules;

namespace Sightglass.Cli.Rules;

/// <summary>A run in which everything that rules speak of is written down.</summary>
internal static class MeasuredRun
{
    /// <summary>Runs once, for however many sets of rules.</summary>
    public static (RunResult Run, RuleTrace[] Traces) Of(RunRequest request, IReadOnlyList<RuleBinding> bindings)
    {
        PlanMeasure[] measures = [.. bindings.SelectMany(b => b.Used).Select(u => u.Measure).Where(m => m.Constant is null).Distinct()];
        Column[] columns = [.. measures.Select(m => new Column(m.Written.Name, UnitTable.One, ColumnSort.Quantity, [], null, world => world.Value(m.Signal)))];
        RunResult run = Runner.Run(request with { Every = SimTime.FromSeconds(RuleTrace.Every) }, columns);
        Dictionary<PlanMeasure, int> column = measures.Select((m, i) => (m, i)).ToDictionary(p => p.m, p => p.i);
        RuleTrace[] traces = [.. bindings.Select(b => new RuleTrace(b))];
        foreach ((SimTime time, double[] values) in run.Recorder.Rows)
        {
            foreach (RuleTrace trace in traces)
            {
                trace.Take(time, m => values[column[m]]);
            }
        }

        return (run, traces);
    }
}

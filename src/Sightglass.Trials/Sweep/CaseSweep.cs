using Sightglass.World.Runs;

namespace Sightglass.Trials.Sweep;

/// <summary>
/// Runs many cases of one setup: eight lanes or more a thread and machine, each refilled when its case is over. An outcome depends on nothing but
/// (setup, seed, case).
/// </summary>
public static class CaseSweep
{
    /// <summary>Cases for each of which a thread takes a further bank of eight lanes, up to the most: with few, most of its lanes would be through before the last.</summary>
    private const int CasesABank = 32;
    private const int MostBanks = 3;

    /// <returns>
    /// Outcomes by case. When the token is cancelled, no further case is begun and those under way are ended: what is left is <see cref="OutcomeKind.Running"/>,
    /// and what is done are the first cases in the order of dealing.
    /// </returns>
    public static Outcome[] Run(TrialSetup setup, SweepOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        options.Validate();
        Outcome[] outcomes = new Outcome[options.Cases];
        (int threads, int banks) = (ThreadsFor(options), BanksFor(setup, options));
        CaseQueue queue = new(setup, options, stop);
        int done = 0;
        if (threads == 1)
        {
            Work();
            return outcomes;
        }

        Thread[] workers = [.. Enumerable.Range(0, threads).Select(_ => new Thread(Work))];
        Array.ForEach(workers, w => w.Start());
        Array.ForEach(workers, w => w.Join());
        return outcomes;

        void Finish(int index, Outcome outcome)
        {
            outcomes[index] = outcome;
            options.Progress?.Invoke(Interlocked.Increment(ref done));
        }

        void Work()
        {
            LaneWorker[] machines = [.. Enumerable.Range(0, setup.Machines.Length).Select(m => new LaneWorker(setup, m, options.Seed, queue, options.FirstCase, banks, Finish))];
            while (Behind(machines) is { } worker)
            {
                worker.GoOn();
            }

            Array.ForEach(machines, m => m.Dispose());
        }
    }

    /// <summary>How many banks of eight lanes a thread takes for each machine.</summary>
    internal static int BanksFor(TrialSetup setup, SweepOptions options) =>
        Math.Clamp(options.Cases / (CasesABank * ThreadsFor(options) * setup.Machines.Length), 1, MostBanks);

    private static int ThreadsFor(SweepOptions options) =>
        Math.Min(options.Threads == 0 ? Environment.ProcessorCount : options.Threads, (options.Cases + 7) / 8);

    /// <summary>The machine whose next case is the first in turn; of those without further cases, any that is still at one; null when all are over.</summary>
    private static LaneWorker? Behind(LaneWorker[] machines)
    {
        LaneWorker? first = null;
        foreach (LaneWorker machine in machines)
        {
            if (!machine.IsOver && (first is null || machine.NextTurn < first.NextTurn))
            {
                first = machine;
            }
        }

        return first;
    }
}

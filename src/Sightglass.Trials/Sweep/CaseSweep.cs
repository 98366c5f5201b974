using Sightglass.World.Runs;

namespace Sightglass.Trials.Sweep;

/// <summary>
/// Runs many cases of one setup: eight lanes a thread, each refilled when its case is over. An outcome depends on nothing but
/// (setup, seed, case).
/// </summary>
public static class CaseSweep
{
    /// <returns>Outcomes by case; those not reached before the token was cancelled are <see cref="OutcomeKind.Running"/>.</returns>
    public static Outcome[] Run(TrialSetup setup, SweepOptions options, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(setup);
        ArgumentNullException.ThrowIfNull(options);
        options.Validate();
        Outcome[] outcomes = new Outcome[options.Cases];
        int threads = Math.Min(options.Threads == 0 ? Environment.ProcessorCount : options.Threads, (options.Cases + 7) / 8);
        CaseQueue queue = new(options.Cases, options.Backwards);
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
            using LaneWorker worker = new(setup, options.Seed);
            worker.Run(queue, options.FirstCase, Finish, stop);
        }
    }
}

using System.Collections.Immutable;
using Sightglass.Basics.Time;
using Sightglass.Plant.Plans;
using Sightglass.Plant.Signals;
using Sightglass.World.Situations;

namespace Sightglass.Trials.Causes;

/// <summary>
/// What a machine looks like with each thing wrong that keeps a fact from coming to hold. Found by doing: each is put wrong by itself in several cases of a situation in which the fact comes to hold
/// otherwise, and everything that can be seen is looked at. What it shows is told by how it differs from what it shows while nothing is wrong: as usual, lower, higher.
/// </summary>
public sealed class CauseTable
{
    /// <summary>Cases in which nothing is wrong, by which the usual is known.</summary>
    public const int UsualCases = 16;

    /// <summary>Cases in which each thing is put wrong.</summary>
    public const int CasesEach = 4;

    /// <summary>Outcomes of a look: lower, as usual, higher.</summary>
    internal const int Outcomes = 3;

    /// <summary>What is added to every count, so that what was never seen is unlikely and not impossible.</summary>
    private const double Unseen = 0.05;

    /// <summary>Below this it was not seen in any case.</summary>
    private static readonly double s_seldom = Math.Log(0.1);

    private readonly SituationStart _start;
    private readonly ulong _seed;
    private readonly double[] _low;
    private readonly double[] _high;
    private readonly double[] _logs;

    private CauseTable(BoundSearch search, Plan plan, SituationStart start, ulong seed, ImmutableArray<Look> looks, ImmutableArray<(double Least, double Most)> usual, double[] low, double[] high, ImmutableArray<Cause> causes, double[] logs, int tried)
    {
        (Search, Plan, _start, _seed) = (search, plan, start, seed);
        (Looks, Usual, _low, _high, Causes, _logs, Tried) = (looks, usual, low, high, causes, logs, tried);
    }

    /// <summary>Of what bears on the fact alone.</summary>
    public Plan Plan { get; }

    public BoundSearch Search { get; }

    /// <summary>Things that keep the fact from coming to hold, in the order of the book.</summary>
    public ImmutableArray<Cause> Causes { get; }

    /// <summary>What tells any of them from others, in the order of the book.</summary>
    public ImmutableArray<Look> Looks { get; }

    /// <summary>Between which values each look shows the usual: SI as read, the position's number, 1 and 0.</summary>
    public ImmutableArray<(double Least, double Most)> Usual { get; }

    /// <summary>How many things were put wrong.</summary>
    public int Tried { get; }

    /// <summary>Where somebody stands who begins to look: the first person of the situation.</summary>
    public int Begin => _start.Situation.People is [var first, ..] ? Math.Max(0, Plan.Ways.IndexOf(first.Places[0])) : 0;

    /// <summary>Makes the table. Null where the fact does not come to hold in the situation though nothing is wrong; then <paramref name="holds"/> says in how many cases it did.</summary>
    /// <param name="search">What is looked into.</param>
    /// <param name="seed">Settles the draws of the cases.</param>
    /// <param name="holds">In how many of <see cref="UsualCases"/> cases the fact came to hold.</param>
    /// <param name="stop">Gives up.</param>
    public static CauseTable? Make(BoundSearch search, ulong seed, out int holds, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(search);
        (Signal wanted, SimTime within) = (search.Wanted, search.Within);
        Plan only = search.Plan.Only([wanted]);
        SituationStart start = SituationStart.Bind(only, search.Situation, [])!;
        ImmutableArray<Look> looks = Look.AllOf(only);
        double[] low = [.. looks.Select(_ => double.PositiveInfinity)], high = [.. looks.Select(_ => double.NegativeInfinity)];
        Dictionary<int, int> stands = [];
        int held = 0;
        using LaneRunner runner = new(only);
        runner.Run(UsualCases, within, (world, i) => start.Apply(world, seed, (ulong)i), (world, i) =>
        {
            held += world.Value(wanted) >= 0 ? 1 : 0;
            for (int l = 0; l < looks.Length; l++)
            {
                double shown = looks[l].See(world), slack = looks[l].Slack;
                (low[l], high[l]) = (Math.Min(low[l], shown - slack), Math.Max(high[l], shown + slack));
            }

            foreach (ItemPlan item in only.Items.Values.Where(p => i == 0 && p.Position is not null))
            {
                stands[item.Position!.Value.Index] = (int)world.GetSlot(item.Position.Value);
            }
        }, stop: stop);
        holds = held;
        if (held < UsualCases)
        {
            return null;
        }

        ImmutableArray<Cause> all = CauseList.Of(only, wanted, p => stands[p.Position!.Value.Index]);
        int[] broke = new int[all.Length];
        double[] counts = new double[all.Length * looks.Length * Outcomes];
        runner.Run(all.Length * CasesEach, within, (world, i) => Put(world, start, seed, (ulong)(i % CasesEach), [all[i / CasesEach]]), (world, i) =>
        {
            int cause = i / CasesEach;
            broke[cause] += world.Value(wanted) >= 0 || HasSprungBack(world, all[cause]) ? 0 : 1;
            for (int l = 0; l < looks.Length; l++)
            {
                counts[(((cause * looks.Length) + l) * Outcomes) + Compare(looks[l].See(world), low[l], high[l])]++;
            }
        }, stop: stop);
        int[] breaking = [.. Enumerable.Range(0, all.Length).Where(c => broke[c] == CasesEach)];
        int[] telling = [.. Enumerable.Range(0, looks.Length).Where(l => breaking.Any(c => counts[(((c * looks.Length) + l) * Outcomes) + 1] < CasesEach))];
        double[] logs = [.. breaking.SelectMany(c => telling.SelectMany(l => Enumerable.Range(0, Outcomes).Select(o => Math.Log((counts[(((c * looks.Length) + l) * Outcomes) + o] + Unseen) / (CasesEach + (Outcomes * Unseen))))))];
        return new(search, only, start, seed, [.. telling.Select(l => looks[l])], [.. telling.Select(l => (low[l] + looks[l].Slack, high[l] - looks[l].Slack))], [.. telling.Select(l => low[l])], [.. telling.Select(l => high[l])], [.. breaking.Select(c => all[c])], logs, all.Length);
    }

    /// <summary>The machine with some things wrong, in a case that the table was not made from; and whether the fact holds all the same.</summary>
    /// <returns>What each look shows: −1, 0, 1 for lower than usual, as usual, higher.</returns>
    internal (int[] Seen, bool Holds)[] See(IReadOnlyList<ImmutableArray<Cause>> wrong, LaneRunner runner, int firstCase)
    {
        (int[], bool)[] seen = new (int[], bool)[wrong.Count];
        runner.Run(wrong.Count, Search.Within, (world, i) => Put(world, _start, _seed, (ulong)(firstCase + i), wrong[i]), (world, i) =>
            seen[i] = ([.. Looks.Select((look, l) => Compare(look.See(world), _low[l], _high[l]) - 1)], world.Value(Search.Wanted) >= 0));
        return seen;
    }

    /// <summary>What a look that shows a value tells.</summary>
    /// <param name="look">Its number.</param>
    /// <param name="value">SI as read, the position's number, or 1 and 0.</param>
    /// <returns>−1, 0, 1 for lower than usual, as usual, higher.</returns>
    public int Told(int look, double value) => Compare(value, _low[look], _high[look]) - 1;

    /// <summary>Logarithm of how likely a look shows an outcome with one thing wrong.</summary>
    internal double LogOf(int cause, int look, int outcome) => _logs[(((cause * Looks.Length) + look) * Outcomes) + outcome + 1];

    /// <summary>Whether a look shows an outcome with anything that may be wrong.</summary>
    internal bool CanShow(int look, int outcome) => Enumerable.Range(0, Causes.Length).Any(c => LogOf(c, look, outcome) > s_seldom);

    /// <summary>What a look mostly shows with one thing wrong.</summary>
    internal int MostlyOf(int cause, int look)
    {
        double lower = LogOf(cause, look, -1), usual = LogOf(cause, look, 0), higher = LogOf(cause, look, 1);
        return usual >= lower && usual >= higher ? 0 : lower >= higher ? -1 : 1;
    }

    private static void Put(World.World world, SituationStart start, ulong seed, ulong number, ImmutableArray<Cause> wrong)
    {
        start.Apply(world, seed, number);
        foreach (Cause cause in wrong)
        {
            if (cause.Fault is { } fault)
            {
                world.Do(new World.WorldAction.PutIn(cause.Item.Name, fault, ImmutableSortedDictionary<string, double>.Empty), SimTime.Zero);
            }
            else
            {
                world.SetSlot(world.Plan.Items[cause.Item.Name].Position!.Value, cause.Item.Positions.IndexOf(cause.Position!));
            }
        }
    }

    /// <summary>A button that springs back is no cause: what it did is one.</summary>
    private static bool HasSprungBack(World.World world, Cause cause) =>
        cause.Position is { } position && world.GetSlot(world.Plan.Items[cause.Item.Name].Position!.Value) != cause.Item.Positions.IndexOf(position);

    private static int Compare(double shown, double low, double high) => shown < low ? 0 : shown > high ? 2 : 1;
}

using System.Runtime.CompilerServices;
using Sightglass.Basics.Numbers;
using Sightglass.Basics.Time;
using Sightglass.Network.Step;

namespace Sightglass.Network.Groups;

public sealed unsafe partial class LaneGroup
{
    /// <summary>A step made from the flows moves no potential by more than this many tolerances.</summary>
    private const double FirstMove = 64;

    private const long LongestStep = 1L << 42;

    /// <summary>Lanes whose attempt ends within their pending step: of looks, of cuts, and of looks still in view where they lie between its ends. A bit each.</summary>
    private uint _within;

    /// <summary>Whether a lane asks for a step, which may have to end at a switch; a look or a cut lies within a step that was looked at already.</summary>
    private bool _proposes;

    /// <summary>
    /// One attempt for every lane that has a task. Afterwards a lane whose task is <see cref="LaneTask.None"/> has what it asked for;
    /// the others go on with the next iteration. Allocates nothing.
    /// </summary>
    /// <returns>How many lanes still have a task.</returns>
    [SkipLocalsInit]
    public int Iterate()
    {
        Version++;
        Settle();
        bool fromFlows = !TakeSizes();
        bool armed = _proposes && !_armedAny.IsEmpty;
        Frame frame = FrameOf(_amounts, _potentials);
        foreach (StoreBatch batch in Topology.StoreBatches)
        {
            batch.Evaluate(ref frame);
        }

        if (armed)
        {
            EvaluateSwitches(new(this, _amounts, _potentials), _guardAtStart);
        }

        foreach (PathBatch batch in Topology.PathBatches)
        {
            batch.EvaluateWithSlopes(ref frame);
        }

        if (fromFlows)
        {
            MakeSizes(ref frame);
        }

        Lanes seconds = *_seconds;
        Lanes error = Attempt(ref frame, seconds);
        *_nextTicks = NextTicks(error, seconds);
        uint accepted = Lanes.BitsOf(Lanes.LessOrEqual(error, Lanes.Of(1)));
        if ((_within & ~accepted) != 0)
        {
            StayBetween(error, _within & ~accepted);
        }

        if (armed)
        {
            LookAtMiddle(ref frame, seconds);
        }

        EvaluatePotentials(ref frame, _after);
        if (armed)
        {
            EvaluateSwitches(End, _guardAtEnd);
        }

        return Conclude(ref frame, accepted, armed ? LookAtSwitches() : 0);
    }

    private void EvaluatePotentials(ref Frame frame, Lanes* amounts)
    {
        frame.M = amounts;
        foreach (StoreBatch batch in Topology.StoreBatches)
        {
            batch.EvaluatePotentials(ref frame);
        }
    }

    private void EvaluateFlows(ref Frame frame, Lanes* amounts)
    {
        EvaluatePotentials(ref frame, amounts);
        foreach (PathBatch batch in Topology.PathBatches)
        {
            batch.Evaluate(ref frame);
        }
    }

    /// <summary>
    /// The size of every lane's attempt. A lane without a task repeats its last attempt, so that what it had in view stays in view; where there is nothing to try, the
    /// committed state is shown.
    /// </summary>
    /// <returns>False where a size has to be made from the flows yet.</returns>
    private bool TakeSizes()
    {
        bool all = true;
        (_within, _proposes) = (0, false);
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            if (s.Task == LaneTask.Propose)
            {
                s.Size = s.NextSize;
                all &= s.Size != 0;
                _proposes = true;
            }
            else if (s.Task != LaneTask.None)
            {
                s.Size = s.Target - s.Committed;
                _within |= s.Size > 0 ? 1u << lane : 0;
            }
            else if (s.IsBetween && s.Size > 0)
            {
                _within |= 1u << lane;
            }

            At(_seconds, 0, lane) = s.Size == 0 ? 1 : s.Size * SecondsPerTick;
        }

        return all;
    }

    /// <summary>The sizes that have to be made from the flows.</summary>
    private void MakeSizes(ref Frame frame)
    {
        Lanes ticks = TicksOf(SizeFromFlows(ref frame));
        for (int lane = 0; lane < Lanes.Count; lane++)
        {
            LaneState s = _lanes[lane];
            if (s.Task == LaneTask.Propose && s.Size == 0)
            {
                s.Size = (long)ticks[lane];
                At(_seconds, 0, lane) = s.Size * SecondsPerTick;
            }
        }
    }

    /// <summary>Ticks of a step, not whole yet, from 1 to the longest.</summary>
    private static Lanes TicksOf(Lanes seconds) =>
        Lanes.Min(Lanes.Max(seconds * Lanes.Of(SimTime.TicksPerSecond), Lanes.Of(1)), Lanes.Of(LongestStep));

    /// <summary>Seconds in which no potential moves further than <see cref="FirstMove"/> tolerances at its present rate.</summary>
    private Lanes SizeFromFlows(ref Frame frame)
    {
        Lanes fastest = Lanes.Of(1e-9);
        int* at = Topology.RowSums.Start;
        for (int i = 0; i < Plan.Size; i++)
        {
            Lanes flow = Frame.Sum(frame.Q, ref at);
            fastest = Lanes.Max(Lanes.Abs(flow / frame.C[i]) * Lanes.Of(_inverseTolerance[i]), fastest);
        }

        return Lanes.Of(FirstMove) / fastest;
    }

    /// <summary>The four stages. Leaves the amounts at the end in the array for them.</summary>
    /// <returns>The error in tolerances: a lane with more than 1 must try a shorter step.</returns>
    private Lanes Attempt(ref Frame frame, Lanes seconds)
    {
        Lanes rate = Lanes.Of(1) / seconds;
        *frame.Stages.Rate = rate;
        *frame.Stages.Rate21 = rate * Lanes.Of(Rodas3.C21);
        *frame.Stages.Rate43 = rate * Lanes.Of(Rodas3.C43);
        Lanes trusted = Factor(ref frame, rate * Lanes.Of(1 / Rodas3.Gamma));
        Lanes share = seconds * Lanes.Of(Rodas3.Gamma);
        SubstituteBackward<Rodas3.First>(ref frame, share);
        SubstituteForward<Rodas3.Second>(ref frame);
        SubstituteBackward<Rodas3.Second>(ref frame, share);
        EvaluateFlows(ref frame, frame.Stages.Third);
        SubstituteForward<Rodas3.Third>(ref frame);
        SubstituteBackward<Rodas3.Third>(ref frame, share);
        EvaluateFlows(ref frame, frame.Stages.Fourth);
        SubstituteForward<Rodas3.Fourth>(ref frame);
        SubstituteBackward<Rodas3.Fourth>(ref frame, share);
        return Lanes.Select(trusted, Error(), Lanes.Of(Refused));
    }

    /// <summary>
    /// Stands for the error of an attempt that gave no numbers to trust.
    /// </summary>
    private const double Refused = 1e300;

    private Lanes Error()
    {
        Lanes error = default;
        Lanes all = default;
        for (int i = 0; i < Topology.Amounts; i++)
        {
            Lanes share = _solution[i] * Lanes.Of(_inverseTolerance[i]);
            error = Lanes.Max(error, Lanes.Abs(share));
            all += share;
        }

        // One that is not a number makes the sum not a number.
        return Lanes.Select(Lanes.LessOrEqual(all, all), error, Lanes.Of(Refused));
    }
}

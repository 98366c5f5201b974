using Sightglass.Basics.Time;
using Sightglass.Training.Drills;
using Sightglass.World;
using Sightglass.World.People;
using Sightglass.World.Records;
using Sightglass.World.Runs;

namespace Sightglass.Training.Debrief;

/// <summary>
/// Runs a record up to a moment exactly, and from there another way: by a card in the trainee's hand, by other acts, or with nothing more done. What the instructor and the other people did
/// afterwards is done again as it was; the trainee is judged by what they do.
/// </summary>
public static class WhatIf
{
    /// <summary>Seconds between two looks whether a hand is free.</summary>
    private const double Patience = 0.5;

    /// <param name="drill">That of the record, on its machine.</param>
    /// <param name="record">As read.</param>
    /// <param name="ask">From when, and what.</param>
    /// <param name="told">Told how far it has come, or null.</param>
    /// <param name="cancel">Ends it.</param>
    /// <exception cref="ArgumentException">The record is of another drill, or does not fit the plan; or a card and acts are both given.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static WhatIfResult Run(BoundDrill drill, SessionRecord record, WhatIfAsk ask, IProgress<SimTime>? told = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(drill);
        ArgumentNullException.ThrowIfNull(record);
        ArgumentNullException.ThrowIfNull(ask);
        bool byCard = !ask.Card.IsDefaultOrEmpty;
        if (byCard && !ask.Acts.IsDefaultOrEmpty)
        {
            throw new ArgumentException("Either by a card or by acts.", nameof(ask));
        }

        SimTime from = new(Math.Clamp(ask.From.Ticks, 0, record.End));
        using DebriefStage stage = new(drill, record.Header.Start) { Told = told };
        Replay.Schedule(stage.World, record with { Lines = [.. record.Lines.Where(l => l.At <= from.Ticks || l.Do is null || World.World.PersonOf(l.Do) != drill.Person)] });
        stage.World.SampleAt(SimTime.Zero);
        SimTime last = SimTime.FromSeconds(drill.Drill.TimeLimit + drill.Drill.Objectives.Select(o => o.Stays).DefaultIfEmpty().Max() + 1);
        // As many moments before as after: both are looked at.
        stage.Run(from, DebriefFilm.MostMoments / 4, DebriefFilm.MostMoments / 4, cancel);
        stage.Look();
        Free(stage, drill.Person, last, cancel);
        SimTime parts = stage.World.Now;
        CardRun? card = byCard ? new(ask.Card) { RestAtEnd = false, WorkedBy = drill.Person } : null;
        if (card is not null)
        {
            stage.World.Begin(card);
        }

        (int, Hindrance)? refused = ask.Acts.IsDefaultOrEmpty ? null : Do(stage, drill.Person, ask, last, cancel);
        stage.Run(last, DebriefFilm.MostMoments / 4, DebriefFilm.MostMoments / 4, cancel);
        return new(stage.End(card), parts, refused);
    }

    private static (int Act, Hindrance Why)? Do(DebriefStage stage, int person, WhatIfAsk ask, SimTime last, CancellationToken cancel)
    {
        for (int i = 0; i < ask.Acts.Length; i++)
        {
            stage.RunTo(SimTime.Min(last, stage.World.Now + SimTime.FromSeconds(Math.Max(ask.Acts[i].After, 0))), cancel);
            WorldAction act = ask.Acts[i].Does;
            if (stage.World.Rests || stage.World.Now >= last)
            {
                return null; // it was over before
            }

            if (stage.World.HindranceOf(act) is not Hindrance.None and var why)
            {
                return (i, why);
            }

            SimTime at = new(stage.World.Now.Ticks + 1);
            stage.World.Do(act, at);
            stage.RunTo(new(at.Ticks + 1), cancel);
            Free(stage, person, last, cancel);
        }

        return null;
    }

    /// <summary>Runs on until somebody stands and has their hands free.</summary>
    private static void Free(DebriefStage stage, int person, SimTime last, CancellationToken cancel)
    {
        World.World world = stage.World;
        while (world.People[person] is { } p && (p.WalkingTo >= 0 || p.Deed is not null) && world.Now < last && !world.Rests && world.Trouble is null)
        {
            stage.RunTo(SimTime.Min(last, world.Now + SimTime.FromSeconds(Patience)), cancel);
        }
    }
}

using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Plant.Signals;
using Sightglass.World.Agenda;
using Sightglass.World.People;
using Sightglass.World.Runs;

namespace Sightglass.World;

/// <summary>
/// Somebody who follows a world from its start without being in it: a drill. It is told what people do and what comes true, and may make things happen. What it does follows from the
/// world alone, so that the same start and the same actions live, replayed and without pages come out the same.
/// </summary>
public abstract class Overseer
{
    private World? _world;

    /// <exception cref="InvalidOperationException">It follows no world yet.</exception>
    protected World World => _world ?? throw new InvalidOperationException("It follows no world yet: let it join one.");

    internal void Join(World world) => _world = world;

    /// <summary>The first moment, with the machine in view.</summary>
    protected internal abstract void Begin();

    /// <summary>Something watched has come true, with the machine in view; it is told again each time after it was untrue.</summary>
    /// <param name="watch">Its number.</param>
    protected internal abstract void CameTrue(int watch);

    /// <summary>A moment that was asked for has come.</summary>
    /// <param name="call">Its number.</param>
    protected internal abstract void TimeHasCome(int call);

    /// <summary>Somebody puts a hand to a control.</summary>
    protected internal virtual void Touched(Person person, Item item)
    {
    }

    /// <summary>Somebody stands at a place to which they walked.</summary>
    protected internal virtual void Arrived(Person person)
    {
    }

    /// <summary>Somebody did what they may not do.</summary>
    protected internal virtual void Breached(Person person, Breach breach, string what)
    {
    }

    /// <summary>A danger has injured somebody.</summary>
    /// <param name="person">Whom.</param>
    /// <param name="mechanism">Of what, as <see cref="MechanismWords"/> keeps it.</param>
    protected internal virtual void Injured(Person person, string mechanism)
    {
    }

    /// <summary>Somebody has told somebody something.</summary>
    /// <param name="person">Who tells it.</param>
    /// <param name="role">To whom; empty where a card that stops says it to whom it says.</param>
    /// <param name="text">What, numbers as the calculations of a card.</param>
    protected internal virtual void Told(Person person, string role, string text)
    {
    }

    /// <summary>Somebody reports what they found.</summary>
    protected internal virtual void Reported(Person person, string finding)
    {
    }

    /// <summary>Somebody asks for a hint.</summary>
    protected internal virtual void Hinted(Person person)
    {
    }

    /// <summary>Somebody says that they are done; a card that has ended says so too.</summary>
    protected internal virtual void Declared(Person person)
    {
    }

    /// <summary>Somebody calls that everything is to stop at once.</summary>
    protected internal virtual void Stopped(Person person)
    {
    }

    /// <summary>The instructor acts in somebody's stead, or no longer does.</summary>
    protected internal virtual void TakenOver(Person person, bool isTaken)
    {
    }

    /// <summary>Something was done to the machine or its surroundings from outside, by nobody who is there.</summary>
    protected internal virtual void Interfered(WorldAction action)
    {
    }

    /// <summary>Watches a condition from now on. Only with the machine in view.</summary>
    /// <param name="watch">0 or more; by this number it is told.</param>
    /// <param name="margin">Not negative while it is true.</param>
    /// <returns>Whether it is true already.</returns>
    protected bool Watch(int watch, Signal margin) => World.Watch(Sentinel.OfOverseer(watch), margin) >= 0;

    /// <summary>Asks to be told at a moment.</summary>
    /// <param name="at">Not before now.</param>
    /// <param name="call">0 or more.</param>
    protected void CallAt(SimTime at, int call) => World.Agenda.Add(new(at, AgendaKind.Overseer, call));

    /// <summary>Makes something happen at once.</summary>
    protected void Put(WorldAction action) => World.Do(action, World.Now);

    /// <summary>The world stands for good: nothing more is asked of it.</summary>
    protected void Rest() => World.Rest();
}

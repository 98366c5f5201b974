using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;

namespace Sightglass.Cards.Programs;

/// <summary>
/// One small operation of a card's program. It runs from the first to the last; whatever names another operation names its index in
/// <see cref="CardProgram.Ops"/>. Times are seconds, numbers SI.
/// </summary>
public abstract record CardOp
{
    private CardOp()
    {
    }

    /// <summary>The number of the step as printed, from 1.</summary>
    public required int Step { get; init; }

    /// <summary>The sentence it came from.</summary>
    public required Span Span { get; init; }

    /// <summary>Who does it, or null for the one who holds the card.</summary>
    public Role? Person { get; init; }

    /// <summary>For an operation of a card that this one calls: where it stands there. <see cref="Step"/> is then the step that calls.</summary>
    public CalledStep? Called { get; init; }

    /// <summary>The number of the step on the card where it is printed.</summary>
    public int PrintedStep => Called?.Step ?? Step;

    /// <summary>Walks to a place.</summary>
    public sealed record Go(Place Place) : CardOp;

    /// <summary>Puts a control in a position; <see cref="Verb"/> says in which words.</summary>
    public sealed record Set(ItemChoice Item, string Position, Sentences.Operation Verb) : CardOp
    {
        /// <summary>For a connection: what it is connected to.</summary>
        public Item? Other { get; init; }
    }

    /// <summary>
    /// Keeps a control in a position by hand and lets go again: for a time (<paramref name="Until"/> null), or until something shows and
    /// at most for that time (then on at <paramref name="Else"/>).
    /// </summary>
    public sealed record Hold(ItemChoice Item, string Position, double Seconds, Condition? Until, int Else) : CardOp;

    /// <summary>Looks once; goes on at <paramref name="Else"/> when it does not hold.</summary>
    public sealed record Check(Condition Condition, int Else) : CardOp;

    /// <summary>Looks for something that may be seen, heard or smelled; goes on at <paramref name="Else"/> when it is not there.</summary>
    public sealed record Look(Sign Sign, int Else) : CardOp
    {
        /// <summary>Where one has to stand for it; null: wherever one is.</summary>
        public Place? Place { get; init; }
    }

    /// <summary>Reads an indication and writes the number down.</summary>
    public sealed record Read(ItemChoice Item, int Name) : CardOp;

    public sealed record WaitFor(double Seconds) : CardOp;

    /// <summary>Keeps looking from the same place; goes on at <paramref name="Else"/> when the time is over.</summary>
    public sealed record WaitUntil(Condition Condition, double AtMostSeconds, int Else) : CardOp;

    public sealed record Tell(ImmutableArray<Role> Roles, TextTemplate Text) : CardOp;

    /// <summary>Asks for a protection or for permission to operate a control; goes on at <paramref name="Else"/> without the answer in time.</summary>
    public sealed record Ask(Role Role, Protection? Protection, ItemChoice? Control, double AtMostSeconds, int Else) : CardOp;

    /// <summary>
    /// Asks somebody to operate a control and waits for the answer: goes on here after a yes, at <paramref name="Else"/> after a no and without
    /// an answer in time. <paramref name="What"/> is what is asked; whoever is asked does it where they come to it.
    /// </summary>
    public sealed record Request(Role Role, Set What, double AtMostSeconds, int Else) : CardOp;

    public sealed record GiveBack(Protection Protection) : CardOp;

    /// <summary>
    /// Sets a protection on an item or at a place (the other is null), or removes it again; <see cref="Verb"/> says in which words.
    /// </summary>
    public sealed record Protect(Protection Protection, ItemChoice? Item, Place? Place, bool Sets, Sentences.Operation Verb) : CardOp;

    /// <summary>
    /// Several people each begin at one of <paramref name="Branches"/>, which stand in order behind it, and do it at the same time until
    /// each has come to a <see cref="Join"/>; then on at <paramref name="Next"/>.
    /// </summary>
    public sealed record Together(ImmutableArray<int> Branches, int Next) : CardOp;

    /// <summary>The end of what one person does at the same time as others.</summary>
    public sealed record Join : CardOp;

    /// <summary>Takes another card in hand; its operations follow.</summary>
    public sealed record Call(string Title, Binding? Binding) : CardOp;

    public sealed record Jump(int Target) : CardOp;

    /// <summary>Goes on here when the condition holds, at <paramref name="Else"/> when it does not.</summary>
    public sealed record If(Condition Condition, int Else) : CardOp;

    /// <summary>
    /// Goes on here when the condition holds. Otherwise back to <paramref name="Back"/>, not before <paramref name="EverySeconds"/> after
    /// the last round began, at most <paramref name="Times"/> times; then on at <paramref name="Else"/>.
    /// </summary>
    /// <param name="Counter">Which of <see cref="CardProgram.Counters"/> counters it keeps; starts at 0 and is set back to 0 on leaving.</param>
    public sealed record Repeat(Condition Until, int Times, double EverySeconds, int Back, int Counter, int Else) : CardOp;

    /// <summary>Ends the card safely without having done its job; counted apart from good and bad.</summary>
    public sealed record Stop(TextTemplate Text) : CardOp;

    /// <summary>The last step is done: from here <see cref="CardProgram.DoneWhen"/> is judged.</summary>
    public sealed record Done : CardOp;
}

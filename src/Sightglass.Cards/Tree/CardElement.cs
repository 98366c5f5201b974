using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;

namespace Sightglass.Cards.Tree;

/// <summary>One line of a card, or several where it was wrapped. Every line of the text belongs to one.</summary>
public abstract record CardElement(Span Span)
{
    public sealed record Blank(Span Span) : CardElement(Span);

    /// <summary>Starts with the comment mark; not printed on the card.</summary>
    public sealed record Comment(string Text, Span Span) : CardElement(Span);

    public sealed record Head(ImmutableArray<Sentence> Sentences, Span Span) : CardElement(Span);

    /// <summary>Danger, warning, caution or notice.</summary>
    public sealed record Notice(Sentence Sentence, Span Span) : CardElement(Span);

    /// <summary>A numbered step.</summary>
    /// <param name="Number">As written.</param>
    /// <param name="Person">Whose step it is, where it says so.</param>
    public sealed record Step(int Number, Phrase? Person, ImmutableArray<Sentence> Sentences, Span Span) : CardElement(Span);

    /// <summary>One of a list that belongs to the step above.</summary>
    public sealed record ListItem(Phrase? Person, ImmutableArray<Sentence> Sentences, Span Span) : CardElement(Span);

    /// <summary>A line that was not understood, kept as it is.</summary>
    public sealed record Unread(string Text, Span Span) : CardElement(Span);
}

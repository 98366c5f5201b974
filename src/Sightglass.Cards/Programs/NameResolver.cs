using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>Turns phrases into things of the book and reports those that name nothing, or not what is wanted.</summary>
internal sealed class NameResolver(CardNames names, Scope scope, DiagnosticList found)
{
    public CardNames Names => names;

    public Scope Scope => scope;

    public DiagnosticList Diagnostics => found;

    /// <summary>The items of a phrase, one group for each that is meant; null when unknown.</summary>
    public Found<Item>? Items(Phrase phrase) => Checked(names.Items(phrase, scope, help: true), "C020", "item", phrase);

    /// <summary>One item, or a choice between sides of one; null when unknown or several are meant.</summary>
    public ItemChoice? Item(Phrase phrase)
    {
        Found<Item>? items = Items(phrase);
        return items is null ? null : One(items, phrase) is { } group ? new ItemChoice(group) : null;
    }

    /// <param name="phrase">The words.</param>
    /// <param name="beside">Of several sides, the one on which this place is.</param>
    public Place? Place(Phrase phrase, Place? beside = null)
    {
        Found<Place>? places = Checked(names.Places(phrase, scope, help: true), "C021", "place", phrase);
        if (places is null || One(places, phrase) is not { } group)
        {
            return null;
        }

        if (group.Length > 1 && beside is not null && group.FirstOrDefault(p => SideOf(p) == SideOf(beside)) is { } same)
        {
            return same;
        }

        if (group.Length > 1)
        {
            found.Add(CardMessages.Ambiguous(phrase.Span, phrase.Text, string.Join(" or ", group.Select(p => $"`{p.Name}`"))));
        }

        return group[0];
    }

    /// <summary>The word of the language for a side that a place's name ends with; null without one.</summary>
    private string? SideOf(Place place) => names.Language.Small.Sides.FirstOrDefault(s => names.Shown(place.Name).EndsWith($", {s}", StringComparison.Ordinal));

    public Role? Role(Phrase phrase)
    {
        Found<Role>? roles = Checked(names.Roles(phrase, scope, help: true), "C022", "role", phrase);
        return roles is null || One(roles, phrase) is not { } group ? null : group[0];
    }

    public ImmutableArray<Role> Roles(ImmutableArray<Phrase> phrases) => [.. phrases.Where(p => !names.IsNobody(p)).Select(Role).OfType<Role>()];

    public Found<Sign>? Signs(Phrase phrase)
    {
        Found<Sign> signs = names.Signs(phrase, scope, help: true);
        if (!signs.IsFound && names.Facts(phrase, scope).IsFound)
        {
            found.Add(CardMessages.FactInCondition(phrase.Span, phrase.Text));
            return null;
        }

        return Checked(signs, "C023", "sign", phrase);
    }

    public Found<Fact>? Facts(Phrase phrase)
    {
        Found<Fact> facts = names.Facts(phrase, scope, help: true);
        if (!facts.IsFound && names.Signs(phrase, scope).IsFound)
        {
            found.Add(CardMessages.NotAFact(phrase.Span, phrase.Text));
            return null;
        }

        return Checked(facts, "C024", "fact", phrase);
    }

    public Protection? Protection(Phrase phrase)
    {
        Found<Protection>? protections = Checked(names.Protections(phrase, scope, help: true), "C025", "protection", phrase);
        return protections is null || One(protections, phrase) is not { } group ? null : group[0];
    }

    /// <summary>The position's name as the book spells it; null and a report when some candidate lacks it.</summary>
    public string? Position(ItemChoice choice, string typed, Span at)
    {
        string? position = null;
        foreach (Item item in choice.Candidates)
        {
            position = names.PositionOf(item, typed);
            if (position is null)
            {
                found.Add(item.Positions.IsEmpty
                    ? CardMessages.NotOperated(at, item.Name)
                    : CardMessages.UnknownPosition(at, item.Name, typed, string.Join(", ", item.Positions)));
                return null;
            }
        }

        return position;
    }

    private ImmutableArray<T>? One<T>(Found<T> resolved, Phrase phrase)
    {
        if (resolved.Quantifier == Quantifier.One)
        {
            return resolved.Groups[0];
        }

        found.Add(CardMessages.NotOne(phrase.Span, phrase.Text));
        return null;
    }

    private Found<T>? Checked<T>(Found<T> resolved, string code, string sort, Phrase phrase)
    {
        if (!resolved.IsFound)
        {
            string typed = resolved.Word is null ? phrase.Text : resolved.Tried ?? phrase.Text;
            found.Add(CardMessages.UnknownName(code, phrase.Span, sort, typed, resolved.Nearest, resolved.Word));
            return null;
        }

        if (resolved.IsLoose)
        {
            found.Add(CardMessages.NotTheLabel(phrase.Span, phrase.Text, resolved.Nearest!));
        }

        return resolved;
    }
}

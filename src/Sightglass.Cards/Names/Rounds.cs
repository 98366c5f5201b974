using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Names;

/// <summary>
/// What a <c>For each</c> goes through, in its order: the words that the card lists; those of a letter with that noun; the vehicles of that name;
/// the things of the book that are called after it, of the vehicle at hand or of the machine.
/// </summary>
internal static class Rounds
{
    /// <summary>The noun with the words it stands for, from the first to the last; null after an error.</summary>
    public static Letter? Of(Sentence sentence, CardNames names, Scope scope, DiagnosticList found)
    {
        if (sentence.Operation != Operation.ForEach || sentence.PhraseAt("noun") is not { } noun)
        {
            return null;
        }

        ImmutableArray<string> listed = [.. sentence.PhrasesAt("domain").Select(p => p.Text)];
        ImmutableArray<string> words = listed.IsEmpty ? Known(noun, names, scope) : listed;
        if (words.IsEmpty)
        {
            found.Add(CardMessages.NoneOfNoun(noun.Span, noun.Text, [.. Vehicles(names.Book).Select(v => names.Shown(v.Name)).Select(n => n[..n.LastIndexOf(' ')]).Concat(scope.Letters.Select(l => l.Noun.Text)).Distinct(StringComparer.OrdinalIgnoreCase)]));
            return null;
        }

        int? first = End("first", names.Language.Small.First, 0), last = End("last", names.Language.Small.Last, words.Length - 1);
        string name = names.Key.Of(noun.Text);
        return first is not { } from || last is not { } to
            ? null
            : new(name, noun, from <= to ? words[from..(to + 1)] : [.. words[to..(from + 1)].Reverse()], null, sentence.Span) { IsRound = true };

        int? End(string gap, ImmutableArray<string> extremes, int otherwise)
        {
            if (sentence.PhraseAt(gap) is not { } phrase)
            {
                return otherwise;
            }

            int? at = IndexOf(phrase, noun, words, extremes, otherwise, names, scope);
            if (at is null)
            {
                found.Add(CardMessages.NotOfNoun(phrase.Span, phrase.Text, noun.Text, words));
            }

            return at;
        }
    }

    /// <summary>Whether something can be gone through under this noun.</summary>
    public static bool AreKnown(Phrase noun, CardNames names, Scope scope) => !Known(noun, names, scope).IsEmpty;

    private static ImmutableArray<string> Known(Phrase noun, CardNames names, Scope scope)
    {
        string key = names.Key.Of(noun.Text);
        if (scope.Letters.LastOrDefault(l => names.Key.Of(l.Noun.Text) == key) is { } letter)
        {
            return letter.Domain;
        }

        string[] vehicles = [.. Vehicles(names.Book).Select(v => names.Shown(v.Name)).Where(n => n.StartsWith(key + " ", StringComparison.OrdinalIgnoreCase))];
        return vehicles.Length > 0 ? [.. vehicles] : Called(key, names, scope);
    }

    private static IEnumerable<Vehicle> Vehicles(ClassBook book) => book.Vehicles.Where(v => v.Name.Contains(' ', StringComparison.Ordinal)).OrderBy(v => v.Index);

    /// <summary>What stands before the noun in names of the book: items of one kind, or else places, whichever side they are on.</summary>
    private static ImmutableArray<string> Called(string noun, CardNames names, Scope scope)
    {
        ClassBook book = names.Book;
        Vehicle at = scope.Letters.Where(l => l.IsRound).Reverse().Select(l => book.Vehicles.FirstOrDefault(v => names.Shown(v.Name) == scope.WordOf(l))).FirstOrDefault(v => v is not null)
            ?? book.Vehicles.FirstOrDefault(v => v.IsTheMachine) ?? Vehicle.Alone;
        return names.CalledAfter.GetOrAdd((at.Name, noun), _ => Called(noun, names, at));
    }

    private static ImmutableArray<string> Called(string noun, CardNames names, Vehicle at)
    {
        ClassBook book = names.Book;
        Item[] items = [.. book.ItemsInOrder.Where(i => i.Vehicle.Name == at.Name && Beside(i.Name, at, noun, names) is not null)];
        IEnumerable<string> found = items.Length > 0
            ? items.DistinctBy(i => i.Kind.Name).Count() == 1 ? items.Select(i => i.Name) : []
            : book.PlacesInOrder.Where(p => p.Vehicle.Name == at.Name).Select(p => p.Name);
        return [.. found.Select(n => Beside(n, at, noun, names)).OfType<string>().Distinct(StringComparer.Ordinal)];
    }

    /// <summary><c>aft</c> of <c>aft compartment</c>, <c>front</c> of <c>front truck, right</c>; null for another name.</summary>
    private static string? Beside(string name, Vehicle vehicle, string noun, CardNames names)
    {
        string of = vehicle.IsTheMachine ? "" : $" of {vehicle.Name}";
        string own = of.Length > 0 && name.EndsWith(of, StringComparison.Ordinal) ? name[..^of.Length] : name;
        own = names.Shown(own);
        int side = own.IndexOf(',', StringComparison.Ordinal);
        own = side < 0 ? own : own[..side];
        if (names.Language.Small.IsNounFirst)
        {
            return own.Length > noun.Length + 1 && own.StartsWith(noun + " ", StringComparison.OrdinalIgnoreCase) ? own[(noun.Length + 1)..] : null;
        }

        return own.Length > noun.Length + 1 && own.EndsWith(" " + noun, StringComparison.OrdinalIgnoreCase) ? own[..^(noun.Length + 1)] : null;
    }

    /// <summary>Where the words stand by which a card names one of them, alone or with the noun; null where they name none.</summary>
    private static int? IndexOf(Phrase phrase, Phrase noun, ImmutableArray<string> words, ImmutableArray<string> extremes, int extreme, CardNames names, Scope scope)
    {
        string key = names.Key.Of(phrase.Text);
        if (extremes.Any(e => Same(e, key)))
        {
            return extreme;
        }

        // From the last to the first: the words for one end may stand at the other.
        SmallWords small = names.Language.Small;
        ImmutableArray<string> opposite = extreme == 0 ? small.Last : small.First;
        if (opposite.Any(e => Same(e, key)))
        {
            return words.Length - 1 - extreme;
        }

        string said = scope.Find(names.Key.Bare(phrase.Words).LastOrDefault() ?? "") is { } letter ? scope.WordOf(letter) : key;
        return words.Index().Where(w => Same(w.Item, said)).Select(w => (int?)w.Index).FirstOrDefault();

        bool Same(string word, string wanted) =>
            names.Key.Of(word) == wanted || names.Key.Of(word) == names.Key.Of(wanted) || names.Key.Of($"{word} {noun.Text}") == wanted || names.Key.Of($"{noun.Text} {word}") == wanted;
    }
}

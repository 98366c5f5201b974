using System.Collections.Immutable;
using Sightglass.Book.Model;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>Locks, chocks and signals, which whoever sets them removes; and what is connected to what.</summary>
internal sealed partial class StepCompiler
{
    private void CompileProtecting(Sentence sentence)
    {
        bool sets = sentence.Operation is Operation.LockAndTag or Operation.Chock or Operation.SetProtection;
        if (sentence.PhraseAt("item") is { } phrase)
        {
            ProtectionSort sort = sentence.Operation is Operation.LockAndTag or Operation.Unlock ? ProtectionSort.Locks : ProtectionSort.Chocks;
            if (Resolver.Item(phrase) is { } item && SetOn(item, sort, phrase) is { } own)
            {
                _ops.Add(new CardOp.Protect(own, item, null, sets, sentence.Operation) { Step = _step, Span = sentence.Span, Person = _person });
            }
        }
        else if (sentence.PhraseAt("protection") is { } named && sentence.PhraseAt("place") is { } where
            && Resolver.Protection(named) is { } protection && Resolver.Place(where) is { } place && IsSetAt(protection, place, named, where))
        {
            _ops.Add(new CardOp.Protect(protection, null, place, sets, sentence.Operation) { Step = _step, Span = sentence.Span, Person = _person });
        }
    }

    /// <summary>The protection of a sort that the book sets on each item that may be meant.</summary>
    private Protection? SetOn(ItemChoice item, ProtectionSort sort, Phrase phrase)
    {
        Protection[] known = [.. Resolver.Names.Book.Protections.Values.Where(p => p.Sort == sort)];
        Protection? own = known.FirstOrDefault(p => item.Candidates.All(i => p.Targets.Contains(i.Name)));
        if (own is null)
        {
            Found.Add(CardMessages.NotSetThere(phrase.Span, item.Candidates[0].Name, known.SelectMany(p => p.Targets)));
        }

        return own;
    }

    private bool IsSetAt(Protection protection, Place place, Phrase named, Phrase where)
    {
        if (protection.Sort != ProtectionSort.SetAt)
        {
            Found.Add(CardMessages.NotSet(named.Span, protection.Name, protection.AskedOf));
            return false;
        }

        if (!protection.Targets.Contains(place.Name))
        {
            Found.Add(CardMessages.NotSetThere(where.Span, place.Name, protection.Targets));
            return false;
        }

        return true;
    }

    private void Connect(Sentence sentence)
    {
        if (sentence.PhraseAt("item") is not { } phrase || sentence.PhraseAt("other") is not { } second
            || Resolver.Item(phrase) is not { } item || Resolver.Item(second) is not { } other)
        {
            return;
        }

        Item end = other.Candidates[0];
        Item[] apart = [.. item.Candidates.Where(i => !i.ConnectsTo.Contains(end.Name) && !end.ConnectsTo.Contains(i.Name))];
        if (apart.Length > 0)
        {
            Found.Add(CardMessages.NotConnected(second.Span, apart[0].Name, end.Name, apart[0].ConnectsTo));
            return;
        }

        if (Resolver.Position(item, _card.Language.Of(Operation.Connect)[0].Position!, sentence.Span) is { } position)
        {
            _ops.Add(new CardOp.Set(item, position, Operation.Connect) { Other = end, Step = _step, Span = sentence.Span, Person = _person });
        }
    }
}

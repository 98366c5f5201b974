using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>One method a sentence.</summary>
internal sealed partial class StepCompiler
{
    private void Compile(Sentence sentence, ImmutableArray<CardElement.ListItem> list)
    {
        switch (sentence.Operation)
        {
            case Operation.Go:
                Go(sentence);
                break;
            case Operation.WalkFrom:
                Walk(sentence);
                break;
            case Operation.Open or Operation.Close or Operation.TurnOn or Operation.TurnOff or Operation.Push or Operation.Start or Operation.StopMachine or Operation.Disconnect:
                Set(sentence, _card.Language.Of(sentence.Operation)[0].Position!, sentence.Span);
                break;
            case Operation.Turn when sentence.PhraseAt("position") is { } position:
                Set(sentence, position.Text, position.Span);
                break;
            case Operation.TurnUntil when sentence.PhraseAt("position") is { } position:
                Set(sentence with { Operation = Operation.Turn }, position.Text, position.Span);
                CheckOrWait(sentence);
                break;
            case Operation.Hold or Operation.HoldUntil:
                Hold(sentence);
                break;
            case Operation.Connect:
                Connect(sentence);
                break;
            case Operation.LockAndTag or Operation.Unlock or Operation.Chock or Operation.Unchock or Operation.SetProtection or Operation.RemoveProtection:
                CompileProtecting(sentence);
                break;
            case Operation.Check or Operation.WaitUntil or Operation.Look or Operation.LookAt or Operation.LookWhether or Operation.Read or Operation.Wait:
                CompileLook(sentence);
                break;
            case Operation.Tell or Operation.AskPermission or Operation.AskProtection or Operation.AskRequest or Operation.GiveBack or Operation.Stop:
                CompileTalk(sentence);
                break;
            case Operation.IfNot:
                break;
            default:
                CompileOrder(sentence, list);
                break;
        }
    }

    private void Go(Sentence sentence)
    {
        if (sentence.PhraseAt("place") is { } phrase && Resolver.Place(phrase) is { } place)
        {
            _ops.Add(new CardOp.Go(place) { Step = _step, Span = sentence.Span, Person = _person });
        }
    }

    /// <summary>To where the walk begins, then to where it ends; of several sides it begins on the one on which it ends.</summary>
    private void Walk(Sentence sentence)
    {
        if (sentence.PhraseAt("place") is { } to && sentence.PhraseAt("from") is { } from && Resolver.Place(to) is { } end && Resolver.Place(from, end) is { } start)
        {
            _ops.Add(new CardOp.Go(start) { Step = _step, Span = sentence.Span, Person = _person });
            _ops.Add(new CardOp.Go(end) { Step = _step, Span = sentence.Span, Person = _person });
        }
    }

    private void Set(Sentence sentence, string typed, Span at)
    {
        if (sentence.PhraseAt("item") is not { } phrase || Resolver.Items(phrase) is not { } items)
        {
            return;
        }

        if (items.Quantifier == Quantifier.Any)
        {
            Found.Add(CardMessages.NotOne(phrase.Span, phrase.Text));
            return;
        }

        foreach (ImmutableArray<Item> group in items.Groups)
        {
            ItemChoice choice = new(group);
            if (Resolver.Position(choice, typed, at) is { } position)
            {
                _ops.Add(new CardOp.Set(choice, position, sentence.Operation) { Step = _step, Span = sentence.Span, Person = _person });
            }
        }
    }

    private void Hold(Sentence sentence)
    {
        if (sentence.PhraseAt("item") is not { } phrase || sentence.PhraseAt("position") is not { } typed || Resolver.Item(phrase) is not { } item
            || Resolver.Position(item, typed.Text, typed.Span) is not { } position)
        {
            return;
        }

        if (sentence.Operation == Operation.HoldUntil && sentence.AmountAt("limit") is null)
        {
            Found.Add(CardMessages.NoLimit(sentence.Span));
        }

        double seconds = Seconds(sentence, "limit");
        Condition? until = sentence.ConditionAt("condition") is { } seen ? _round.Conditions.Compile(seen) : null;
        Branch(sentence, otherwise => new CardOp.Hold(item, position, seconds, until, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
    }

    private void CompileLook(Sentence sentence)
    {
        switch (sentence.Operation)
        {
            case Operation.Wait:
                _ops.Add(new CardOp.WaitFor(Seconds(sentence, "limit")) { Step = _step, Span = sentence.Span, Person = _person });
                break;
            case Operation.Read:
                Read(sentence);
                break;
            case Operation.Look or Operation.LookAt or Operation.LookWhether:
                if (sentence.PhraseAt("sign") is { } phrase && Resolver.Signs(phrase) is { } signs)
                {
                    Look(sentence, phrase, signs);
                }

                break;
            default:
                CheckOrWait(sentence);
                break;
        }
    }

    private void CheckOrWait(Sentence sentence)
    {
        bool isCheck = sentence.Operation == Operation.Check;
        if (isCheck && sentence.Tail(Operation.IfNot) is null)
        {
            Found.Add(CardMessages.NoOtherwise(sentence.Span));
        }

        if (!isCheck && sentence.AmountAt("limit") is null)
        {
            Found.Add(CardMessages.NoLimit(sentence.Span));
        }

        double limit = isCheck ? 0 : Seconds(sentence, "limit");
        Condition? condition = sentence.ConditionAt("condition") is { } seen ? _round.Conditions.Compile(seen) : null;
        Branch(sentence, otherwise => condition is null
            ? Nothing(sentence, otherwise)
            : isCheck
                ? new CardOp.Check(condition, otherwise) { Step = _step, Span = sentence.Span, Person = _person }
                : new CardOp.WaitUntil(condition, limit, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
    }

    /// <summary>Stands for an operation with an error, so that the rest is compiled and checked.</summary>
    private CardOp.Jump Nothing(Sentence sentence, int label) => new(label) { Step = _step, Span = sentence.Span, Person = _person };

    private void Look(Sentence sentence, Phrase phrase, Found<Sign> signs)
    {
        if (signs.Quantifier != Quantifier.One)
        {
            Found.Add(CardMessages.NotOne(phrase.Span, phrase.Text));
            return;
        }

        Sign sign = signs.Groups[0][0];
        Place? place = sentence.PhraseAt("place") is { } where ? Resolver.Place(where) : null;
        if (place is not null && !sign.Places.IsDefaultOrEmpty && !sign.Places.Contains(place.Name))
        {
            Found.Add(CardMessages.NotNoticedThere(sentence.PhraseAt("place")!.Span, sign.Name, place.Name, sign.Places));
        }

        Branch(sentence, otherwise => new CardOp.Look(sign, otherwise) { Place = place, Step = _step, Span = sentence.Span, Person = _person });
    }

    private void Read(Sentence sentence)
    {
        if (NameOf(sentence) is var (item, index))
        {
            _ops.Add(new CardOp.Read(item, index) { Step = _step, Span = sentence.Span, Person = _person });
        }
    }

    /// <summary>What is read and the name it gets.</summary>
    private (ItemChoice Item, int Name)? NameOf(Sentence sentence)
    {
        if (sentence.PhraseAt("item") is not { } phrase || sentence.PhraseAt("letter") is not { } name || Resolver.Item(phrase) is not { } item)
        {
            return null;
        }

        if (item.Candidates.FirstOrDefault(i => i.Reading is null) is { } blank)
        {
            Found.Add(CardMessages.NotRead(phrase.Span, blank.Name));
            return null;
        }

        Reading reading = item.Candidates[0].Reading!;
        bool taken = Resolver.Scope.Find(name.Text) is not null || (_written.Find(name.Text) is { } old && old.Unit.Dimension != reading.Unit.Dimension);
        if (taken)
        {
            Found.Add(CardMessages.NameTaken(name.Span, name.Text));
            return null;
        }

        return (item, _written.IndexOf(new(name.Text, reading.Unit, reading.Resolution)));
    }
}

using System.Collections.Immutable;
using System.Globalization;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Model;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>What is said, asked and given back.</summary>
internal sealed partial class StepCompiler
{
    private void CompileTalk(Sentence sentence)
    {
        switch (sentence.Operation)
        {
            case Operation.Tell:
                Tell(sentence, _round.Texts.Compile(sentence.TextAt("text") ?? new Slot.Text("", sentence.Span)));
                break;
            case Operation.Stop:
                Stop(sentence);
                break;
            case Operation.GiveBack:
                if (sentence.PhraseAt("protection") is { } back && ProtectionOf(back, _asked.Distinct()) is { } held)
                {
                    _ops.Add(new CardOp.GiveBack(held) { Step = _step, Span = sentence.Span, Person = _person });
                }

                break;
            case Operation.AskRequest:
                AskTo(sentence);
                break;
            default:
                Ask(sentence);
                break;
        }
    }

    private void Tell(Sentence sentence, TextTemplate text)
    {
        ImmutableArray<Role> roles = Resolver.Roles(sentence.PhrasesAt("roles"));
        _ops.Add(new CardOp.Tell(roles, text) { Step = _step, Span = sentence.Span, Person = _person });
    }

    private void Stop(Sentence sentence)
    {
        TextTemplate text = sentence.TextAt("text") is { } said ? _round.Texts.Compile(said) : StoppedText();
        if (!sentence.PhrasesAt("roles").IsEmpty)
        {
            Tell(sentence, text);
        }

        _ops.Add(new CardOp.Stop(text) { Step = _step, Span = sentence.Span, Person = _person });
    }

    private TextTemplate StoppedText() => new(
    [
        new TextPart.Words(_card.Language.Small.StoppedText
            .Replace("{title}", _card.Title, StringComparison.Ordinal)
            .Replace("{step}", _step.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)),
    ]);

    private void Ask(Sentence sentence)
    {
        Role? role = sentence.PhraseAt("role") is { } phrase ? Resolver.Role(phrase) : null;
        Protection? protection = null;
        ItemChoice? control = null;
        if (sentence.PhraseAt("protection") is { } wanted && role is not null)
        {
            protection = AskedFor(wanted, role);
            _asked.AddRange(protection is null ? [] : [protection]);
        }
        else if (sentence.PhraseAt("item") is { } item)
        {
            control = Resolver.Item(item);
        }

        double limit = AnswerSeconds(sentence);
        Branch(sentence, otherwise => role is null || (protection is null && control is null)
            ? Nothing(sentence, otherwise)
            : new CardOp.Ask(role, protection, control, limit, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
    }

    /// <summary>Asks somebody to operate one control. What is asked is put down apart, as what it would be for whoever does it.</summary>
    private void AskTo(Sentence sentence)
    {
        Role? role = sentence.PhraseAt("role") is { } phrase ? Resolver.Role(phrase) : null;
        double limit = AnswerSeconds(sentence);
        if (role is not null && role.Name == Doer?.Name)
        {
            Found.Add(CardMessages.AsksOneself(sentence.Span, role.Name));
        }

        ImmutableArray<CardOp> asked = sentence.ActionsAt("request") is [{ } request] ? Apart(request) : [];
        Branch(sentence, otherwise => role is not null && asked is [CardOp.Set what]
            ? new CardOp.Request(role, what with { Person = role }, limit, otherwise) { Step = _step, Span = sentence.Span, Person = _person }
            : Nothing(sentence, otherwise));
    }

    /// <summary>What one operating sentence becomes, without putting it down; nothing after an error.</summary>
    private ImmutableArray<CardOp> Apart(Sentence request)
    {
        if (request.Operation == Operation.Unread)
        {
            return [];
        }

        if (!_card.Language.HintsOf(request.Operation).HasFlag(FormHints.Control) || request.Operation is Operation.Hold or Operation.HoldUntil or Operation.TurnUntil || !request.Tails.IsEmpty)
        {
            Found.Add(CardMessages.NotAskedFor(request.Span));
            return [];
        }

        int from = _ops.Count;
        Compile(request, []);
        ImmutableArray<CardOp> ops = _ops.TakeFrom(from);
        if (ops.Length > 1)
        {
            Found.Add(CardMessages.NotOne(request.Span, request.PhraseAt("item")!.Text));
        }

        return ops;
    }

    /// <summary>Who does what is compiled now; null where the card does not say.</summary>
    private Role? Doer => _person ?? (_titles.Length == 1 && _card.Head(Operation.For)?.PhrasesAt("roles") is [{ } first, ..] ? Resolver.Names.Roles(first, Resolver.Scope) is { IsFound: true } found ? found.Groups[0][0] : null : null);

    /// <summary>For how long an answer is waited for; reports where the card does not say, or not what then.</summary>
    private double AnswerSeconds(Sentence sentence)
    {
        if (sentence.Tail(Operation.Answer) is not { } answer)
        {
            Found.Add(CardMessages.NoLimit(sentence.Span));
            answer = sentence;
        }

        if (sentence.Tail(Operation.IfNot) is null)
        {
            Found.Add(CardMessages.NoOtherwise(sentence.Span));
        }

        return Seconds(answer, "limit");
    }

    private Protection? AskedFor(Phrase phrase, Role? role) =>
        ProtectionOf(phrase, Resolver.Names.Book.Protections.Values.Where(p => p.AskedOf == role?.Name));

    /// <summary>The protection a phrase names; the only one there is for the bare word.</summary>
    private Protection? ProtectionOf(Phrase phrase, IEnumerable<Protection> known)
    {
        if (!Resolver.Names.IsProtectionHeld(phrase))
        {
            return Resolver.Protection(phrase);
        }

        Protection[] candidates = [.. known];
        if (candidates.Length == 1)
        {
            return candidates[0];
        }

        Found.Add(CardMessages.NoProtectionHeld(phrase.Span));
        return null;
    }
}

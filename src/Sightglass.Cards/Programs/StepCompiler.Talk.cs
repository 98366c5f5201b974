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
                Tell(sentence, _texts.Compile(sentence.TextAt("text") ?? new Slot.Text("", sentence.Span)));
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
            default:
                Ask(sentence);
                break;
        }
    }

    private void Tell(Sentence sentence, TextTemplate text)
    {
        ImmutableArray<Role> roles = _resolver.Roles(sentence.PhrasesAt("roles"));
        _ops.Add(new CardOp.Tell(roles, text) { Step = _step, Span = sentence.Span, Person = _person });
    }

    private void Stop(Sentence sentence)
    {
        TextTemplate text = sentence.TextAt("text") is { } said ? _texts.Compile(said) : StoppedText();
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
        Role? role = sentence.PhraseAt("role") is { } phrase ? _resolver.Role(phrase) : null;
        if (sentence.Tail(Operation.Answer) is not { } answer)
        {
            Found.Add(CardMessages.NoLimit(sentence.Span));
            answer = sentence;
        }

        if (sentence.Tail(Operation.IfNot) is null)
        {
            Found.Add(CardMessages.NoOtherwise(sentence.Span));
        }

        Protection? protection = null;
        ItemChoice? control = null;
        if (sentence.PhraseAt("protection") is { } wanted && role is not null)
        {
            protection = AskedFor(wanted, role);
            _asked.AddRange(protection is null ? [] : [protection]);
        }
        else if (sentence.PhraseAt("item") is { } item)
        {
            control = _resolver.Item(item);
        }

        double limit = Seconds(answer, "limit");
        Branch(sentence, otherwise => role is null || (protection is null && control is null)
            ? Nothing(sentence, otherwise)
            : new CardOp.Ask(role, protection, control, limit, otherwise) { Step = _step, Span = sentence.Span, Person = _person });
    }

    private Protection? AskedFor(Phrase phrase, Role? role) =>
        ProtectionOf(phrase, _resolver.Names.Book.Protections.Values.Where(p => p.AskedOf == role?.Name));

    /// <summary>The protection a phrase names; the only one there is for the bare word.</summary>
    private Protection? ProtectionOf(Phrase phrase, IEnumerable<Protection> known)
    {
        if (!_resolver.Names.IsProtectionHeld(phrase))
        {
            return _resolver.Protection(phrase);
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

using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Lint;

/// <summary>Alternatives are a list under 'Do one of'.</summary>
internal sealed class AlternativesRule() : LintRule(16)
{
    public override void Check(LintContext card)
    {
        foreach (Sentence sentence in card.StepSentences.SelectMany(s => s.WithInner()))
        {
            bool inline = sentence.Operation == Operation.OneOf && !sentence.ActionsAt("actions").IsEmpty;
            if (inline || LintContext.FirstIn(card.TextOf(sentence), card.Words.Either) is not null || HasOr(card, sentence))
            {
                card.Found.Add(LintMessages.Alternatives(sentence.Span));
            }
        }
    }

    /// <summary>A control or a place that is no name and has the word for 'or' in it.</summary>
    private static bool HasOr(LintContext card, Sentence sentence) => sentence.PhraseAt("item") is { } item
        ? IsEither(card, item) && !card.Names.Items(item, Scope.Empty).IsFound
        : sentence.PhraseAt("place") is { } place && IsEither(card, place) && !card.Names.Places(place, Scope.Empty).IsFound;

    private static bool IsEither(LintContext card, Phrase phrase) => phrase.Words.Any(w => w.Is(card.Language.Small.Or));
}

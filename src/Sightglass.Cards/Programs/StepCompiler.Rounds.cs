using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary><c>For each</c>: its list is put down once for each that it goes through, with its noun meaning the one at hand.</summary>
internal sealed partial class StepCompiler
{
    /// <summary>Does something in the names of each round, one after the other.</summary>
    private void EachRound(Sentence sentence, Action compile)
    {
        if (Rounds.Of(sentence, Resolver.Names, Resolver.Scope, Found) is not { } each)
        {
            return;
        }

        Round around = _round;
        foreach (string word in each.Domain)
        {
            if (_ops.Count > MostOperations)
            {
                Found.Add(CardMessages.TooManySteps(sentence.Span, MostOperations));
                break;
            }

            NameResolver names = new(Resolver.Names, around.Resolver.Scope.InRound(each, word), Found);
            _round = new(each, names, new(names, _written), new(names, _written), _ops.NewLabel(), around);
            compile();
            _ops.Place(_round.Next);
            _round = around;
        }
    }

    /// <summary>Where the next round of a noun begins, or what follows the last.</summary>
    private int NextRound(Sentence sentence)
    {
        string key = sentence.PhraseAt("noun") is { } noun ? Resolver.Names.Key.Of(noun.Text) : "";
        for (Round? round = _round; round is not null; round = round.Around)
        {
            if (round.Each?.Name == key)
            {
                return round.Next;
            }
        }

        Found.Add(CardMessages.NotInRound(sentence.Span, key));
        return _endLabel;
    }

    /// <summary>In whose names is compiled: the card's own, or those of a round.</summary>
    /// <param name="Each">What is gone through; null outside of any round.</param>
    /// <param name="Next">The label behind the round.</param>
    /// <param name="Around">The round in which it is one.</param>
    private sealed record Round(Letter? Each, NameResolver Resolver, ConditionCompiler Conditions, TextCompiler Texts, int Next, Round? Around);
}

using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>
/// Reads conditions and facts joined by 'and', 'or' and semicolons. A joining word inside a name is not taken for a joint as long as the
/// name is known.
/// </summary>
internal sealed class ConditionReader(CardContext context, SentenceReader sentences)
{
    private const int MostJoints = 12;

    public (ConditionPhrase Phrase, int Issues) Read(ImmutableArray<Word> words, int from, int to, FormPlace place, DiagnosticList found, int depth)
    {
        List<ConditionPhrase> parts = [];
        int issues = 0;
        int start = from;
        for (int i = from; i <= to; i++)
        {
            if (i < to && !words[i].Is(";"))
            {
                continue;
            }

            if (i > start)
            {
                (ConditionPhrase part, int wrong) = Joined(words, start, i, place, found, depth);
                parts.Add(part);
                issues += wrong;
            }

            start = i + 1;
        }

        Span span = context.Source.Between(words[from].Start, words[to - 1].End);
        return parts.Count switch
        {
            0 => (Unknown(words, from, to, place), 1),
            1 => (parts[0], issues),
            _ => (new ConditionPhrase.Several([.. parts], span), issues),
        };
    }

    private (ConditionPhrase Phrase, int Issues) Joined(ImmutableArray<Word> words, int from, int to, FormPlace place, DiagnosticList found, int depth)
    {
        List<int> joints = [];
        for (int i = from + 1; i < to - 1 && joints.Count < MostJoints; i++)
        {
            if (words[i].Is(context.Language.Small.And) || words[i].Is(context.Language.Small.Or))
            {
                joints.Add(i);
            }
        }

        Chain chain = new Splitter(this, words, to, place, depth, joints).From(from, 0);
        ImmutableArray<ConditionPhrase> parts = [.. chain.Parts.Select(p => new ConditionPhrase.One(p.Sentence))];
        found.AddRange(chain.Parts.SelectMany(p => p.Found));
        Span span = context.Source.Between(words[from].Start, words[to - 1].End);
        bool and = chain.Joints.Any(j => words[j].Is(context.Language.Small.And));
        bool or = chain.Joints.Any(j => words[j].Is(context.Language.Small.Or));
        if (and && or)
        {
            found.Add(CardMessages.MixedAndOr(span));
            string text = WordList.Squeeze(context.Source.Text[span.Start..span.End]);
            return (new ConditionPhrase.One(Sentence.Of(Operation.Unread, ("text", new Slot.Text(text, span))) with { Span = span }), chain.Issues + 1);
        }

        ConditionPhrase phrase = parts.Length == 1 ? parts[0] : or ? new ConditionPhrase.Any(parts, span) : new ConditionPhrase.All(parts, span);
        return (phrase, chain.Issues);
    }

    private Attempt One(ImmutableArray<Word> words, int from, int to, FormPlace place, int depth)
    {
        while (to - 1 > from && words[to - 1].Is(","))
        {
            to--;
        }

        return sentences.Best(words, from, to, place, depth) ?? new(Unknown(words, from, to, place).Sentence, 1, 0, [], false);
    }

    /// <summary>Taken for a sign or a fact that nobody knows: the compiler says so.</summary>
    private ConditionPhrase.One Unknown(ImmutableArray<Word> words, int from, int to, FormPlace place)
    {
        Span span = context.Source.Between(words[from].Start, words[to - 1].End);
        Phrase phrase = new(WordList.Join(words[from..to]), span);
        (Operation operation, string gap) = place == FormPlace.Fact ? (Operation.Fact, "fact") : (Operation.Sign, "sign");
        return new(Sentence.Of(operation, (gap, new Slot.Named(phrase))) with { Span = span });
    }

    /// <summary>Sentences one after the other with the joints between them.</summary>
    private sealed record Chain(ImmutableArray<Attempt> Parts, ImmutableArray<int> Joints, int Issues);

    /// <summary>Finds the split with the fewest faults; among equals the one with the fewest joints.</summary>
    private sealed class Splitter(ConditionReader reader, ImmutableArray<Word> words, int to, FormPlace place, int depth, List<int> joints)
    {
        private readonly Dictionary<int, Chain> _known = [];

        public Chain From(int start, int joint)
        {
            if (_known.TryGetValue(start, out Chain? known))
            {
                return known;
            }

            Attempt whole = reader.One(words, start, to, place, depth);
            Chain best = new([whole], [], whole.Issues);
            for (int j = joint; j < joints.Count && best.Issues > 0; j++)
            {
                if (joints[j] <= start || joints[j] + 1 >= to)
                {
                    continue;
                }

                Attempt first = reader.One(words, start, joints[j], place, depth);
                Chain rest = From(joints[j] + 1, j + 1);
                if (first.Issues + rest.Issues < best.Issues || IsLikelier(first, rest, best))
                {
                    best = new([first, .. rest.Parts], [joints[j], .. rest.Joints], first.Issues + rest.Issues);
                }
            }

            _known[start] = best;
            return best;
        }

        /// <summary>With a fault somewhere, a split in which most parts are understood tells more than one long name that is not.</summary>
        private static bool IsLikelier(Attempt first, Chain rest, Chain best) =>
            first.Issues + rest.Issues == best.Issues && best.Parts.Length == 1 && (first.Issues == 0 || rest.Parts.Any(p => p.Issues == 0));
    }
}

using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Parsing;

/// <summary>
/// Reads words as the sentence that fits best. Every row and every way to fill its gaps is tried; the first in which each gap holds what
/// it should is taken, otherwise the one with the fewest faults, so that a misspelt name is reported as a name.
/// </summary>
internal sealed class SentenceReader
{
    private const int DeepestNesting = 6;

    private readonly CardContext _context;
    private readonly SlotReader _slots;

    public SentenceReader(CardContext context)
    {
        _context = context;
        _slots = new(context, this);
    }

    /// <summary>The best reading of words[from..to), or null when no row has its words.</summary>
    public Attempt? Best(ImmutableArray<Word> words, int from, int to, FormPlace place, int depth = 0)
    {
        Attempt? best = null;
        if (depth > DeepestNesting || from >= to)
        {
            return null;
        }

        foreach (SentenceForm form in _context.Language.At(place))
        {
            foreach (PatternMatch match in PatternMatcher.Match(form.Pattern, words, from, to))
            {
                if (++_context.Tries > CardContext.MostTries)
                {
                    return best;
                }

                Attempt attempt = Fill(form, match, words, from, to, depth);
                if (attempt.IsBetterThan(best))
                {
                    best = attempt;
                }

                if (attempt.Issues == 0)
                {
                    return attempt;
                }
            }
        }

        return best;
    }

    private Attempt Fill(SentenceForm form, PatternMatch match, ImmutableArray<Word> words, int from, int to, int depth)
    {
        ImmutableSortedDictionary<string, Slot>.Builder slots = ImmutableSortedDictionary.CreateBuilder<string, Slot>(StringComparer.Ordinal);
        DiagnosticList found = [];
        int issues = 0;
        bool open = false;
        Span span = _context.Source.Between(words[from].Start, words[to - 1].End);
        Scope around = _context.Scope;
        foreach ((PatternPart.Slot gap, int start, int end) in match.Gaps)
        {
            _context.Scope = gap.Kind == SlotKind.Actions ? _context.ScopeIn(new(form.Operation, slots.ToImmutable(), span)) : around;
            Filled filled = _slots.Read(gap.Kind, words, start, end, found, depth);
            slots[gap.Name] = filled.Slot;
            issues += filled.Issues;
            open = end == to && filled.IsOpen;
        }

        _context.Scope = around;
        return new(new(form.Operation, slots.ToImmutable(), span) { Form = form }, issues, form.Pattern.LiteralCount, [.. found], open);
    }
}

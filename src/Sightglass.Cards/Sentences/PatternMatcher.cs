using System.Collections.Immutable;

namespace Sightglass.Cards.Sentences;

/// <summary>Finds the ways in which words fit a pattern, shortest gaps first. Bounded: it gives up after so many ways.</summary>
public static class PatternMatcher
{
    private const int MostMatches = 48;
    private const int MostTries = 20_000;

    /// <summary>All ways (at most 48) for <paramref name="words"/>[from..to).</summary>
    public static List<PatternMatch> Match(Pattern pattern, ImmutableArray<Word> words, int from, int to)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        if (to - from < pattern.Leading.Length)
        {
            return [];
        }

        for (int i = 0; i < pattern.Leading.Length; i++)
        {
            if (!words[from + i].Is(pattern.Leading[i]))
            {
                return [];
            }
        }

        Search search = new(words, to);
        search.Walk(new Trail(pattern.Parts, 0, null), from);
        return search.Found;
    }

    /// <summary>The parts still to be matched: some of a list, then those that come after it.</summary>
    private sealed record Trail(ImmutableArray<PatternPart> Parts, int At, Trail? After);

    private sealed class Search(ImmutableArray<Word> words, int end)
    {
        private readonly PatternMatch _match = new();
        private int _tries;

        public List<PatternMatch> Found { get; } = [];

        public void Walk(Trail? trail, int at)
        {
            while (trail is not null && trail.At == trail.Parts.Length)
            {
                trail = trail.After;
            }

            if (Found.Count >= MostMatches || ++_tries > MostTries)
            {
                return;
            }

            if (trail is null)
            {
                if (at == end)
                {
                    Found.Add(_match.Copy());
                }

                return;
            }

            Step(trail, at);
        }

        private void Step(Trail trail, int at)
        {
            Trail next = trail with { At = trail.At + 1 };
            switch (trail.Parts[trail.At])
            {
                case PatternPart.Literal literal when at < end && words[at].Is(literal.Text):
                    Walk(next, at + 1);
                    break;
                case PatternPart.Optional optional:
                    Walk(new Trail(optional.Parts, 0, next), at);
                    Walk(next, at);
                    break;
                case PatternPart.Slot slot:
                    Fill(slot, next, at);
                    break;
            }
        }

        private void Fill(PatternPart.Slot slot, Trail next, int at)
        {
            if (at >= end || words[at].IsMark)
            {
                return;
            }

            string? literal = NextLiteral(next);
            bool last = literal is null && IsEnd(next);
            for (int to = last ? end : at + 1; to <= end; to++)
            {
                if (literal is not null && (to == end || !words[to].Is(literal)))
                {
                    continue;
                }

                _match.Push(slot, at, to);
                Walk(next, to);
                _match.Pop();
            }
        }

        /// <summary>The word that must come next, or null when that is not certain.</summary>
        private static string? NextLiteral(Trail? trail)
        {
            while (trail is not null && trail.At == trail.Parts.Length)
            {
                trail = trail.After;
            }

            return trail is not null && trail.Parts[trail.At] is PatternPart.Literal literal ? literal.Text : null;
        }

        private static bool IsEnd(Trail? trail)
        {
            while (trail is not null && trail.At == trail.Parts.Length)
            {
                trail = trail.After;
            }

            return trail is null;
        }
    }
}

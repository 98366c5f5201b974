using System.Collections.Immutable;
using System.Text;
using Sightglass.Basics.Diagnostics;
using Sightglass.Basics.Quantities;
using Sightglass.Cards.Names;
using Sightglass.Cards.Sentences;
using Sightglass.Cards.Tree;

namespace Sightglass.Cards.Programs;

/// <summary>Makes templates of what is said: <c>{C}</c> becomes the word, <c>{P1 − P2}</c> a number with its unit.</summary>
internal sealed class TextCompiler(NameResolver resolver, WrittenNames written)
{
    public TextTemplate Compile(Slot.Text text)
    {
        List<TextPart> parts = [];
        StringBuilder words = new();
        int at = 0;
        while (at < text.Value.Length)
        {
            char c = text.Value[at];
            if (c is not ('{' or '}'))
            {
                words.Append(c);
                at++;
                continue;
            }

            int end = text.Value.IndexOf('}', at);
            if (c == '}' || end < 0 || text.Value.AsSpan(at + 1, end - at - 1).Contains('{'))
            {
                resolver.Diagnostics.Add(CardMessages.Braces(text.Span));
                words.Append(text.Value, at, text.Value.Length - at);
                break;
            }

            Fill(text.Value[(at + 1)..end].Trim(), text.Span, words, parts);
            at = end + 1;
        }

        Flush(words, parts);
        CheckBareLetters(text);
        return new([.. parts]);
    }

    private void Fill(string name, Span span, StringBuilder words, List<TextPart> parts)
    {
        if (resolver.Scope.Find(name) is { } letter)
        {
            words.Append(resolver.Scope.WordOf(letter));
            return;
        }

        if (written.Read(name, span, resolver.Diagnostics) is not { } expression)
        {
            return;
        }

        WrittenName like = written.FirstIn(name)!;
        bool same = expression.Dimension == like.Unit.Dimension;
        Unit unit = same ? like.Unit : new Unit("", expression.Dimension, 1);
        Flush(words, parts);
        parts.Add(new TextPart.Value(expression, expression.IsDifference ? unit with { Offset = 0 } : unit, same ? like.Resolution : null));
    }

    private static void Flush(StringBuilder words, List<TextPart> parts)
    {
        if (words.Length > 0)
        {
            parts.Add(new TextPart.Words(words.ToString()));
            words.Clear();
        }
    }

    private void CheckBareLetters(Slot.Text text)
    {
        ImmutableArray<Word> words = WordList.Of(text.Value);
        foreach (Letter letter in resolver.Scope.Letters.Where(l => l.IsRound ? LeavesOpen(words, l) : words.Any(w => w.Text == l.Name)))
        {
            resolver.Diagnostics.Add(CardMessages.BareLetter(text.Span, letter.Name));
        }
    }

    /// <summary>Whether a text speaks of <c>the car</c>: whoever hears it does not see which.</summary>
    private bool LeavesOpen(ImmutableArray<Word> words, Letter round)
    {
        string[] noun = [.. round.Noun.Words.Select(w => w.Text)];
        return Enumerable.Range(1, Math.Max(0, words.Length - noun.Length)).Any(at =>
            resolver.Names.Language.Small.Articles.Any(words[at - 1].Is) && noun.Index().All(n => words[at + n.Index].Is(n.Item)));
    }
}

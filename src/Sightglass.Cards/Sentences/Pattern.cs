using System.Collections.Immutable;
using System.Text;

namespace Sightglass.Cards.Sentences;

/// <summary>
/// The shape of a sentence: words that stand as they are, gaps as <c>{item}</c> or <c>{limit:time}</c>, and what may be left out in
/// square brackets: <c>Wait until {condition}[, at most {limit:time}]</c>.
/// </summary>
public sealed class Pattern
{
    private Pattern(string text, ImmutableArray<PatternPart> parts)
    {
        Text = text;
        Parts = parts;
        SlotNames = [.. Slots(parts).Select(s => s.Name)];
        Required = [.. parts.OfType<PatternPart.Slot>().Select(s => s.Name)];
        Leading = [.. parts.TakeWhile(p => p is PatternPart.Literal).Select(p => ((PatternPart.Literal)p).Text)];
        LiteralCount = parts.Count(p => p is PatternPart.Literal);
        TakesRest = Slots(parts).LastOrDefault()?.Kind is SlotKind.Text or SlotKind.Actions;
    }

    public string Text { get; }

    public ImmutableArray<PatternPart> Parts { get; }

    public ImmutableArray<string> SlotNames { get; }

    /// <summary>The gaps that cannot be left out.</summary>
    public ImmutableArray<string> Required { get; }

    /// <summary>The words with which the sentence begins.</summary>
    public ImmutableArray<string> Leading { get; }

    public int LiteralCount { get; }

    /// <summary>Whether its last gap takes all that follows in the step, full stops included.</summary>
    public bool TakesRest { get; }

    /// <exception cref="FormatException">A table's author made a mistake.</exception>
    public static Pattern Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int at = 0;
        ImmutableArray<PatternPart> parts = ReadParts(text, ref at, inBrackets: false);
        return new(text, parts);
    }

    /// <summary>For people: <c>Turn ITEM to POSITION</c>.</summary>
    public string Readable()
    {
        StringBuilder text = new();
        int at = 0;
        while (at < Text.Length)
        {
            if (Text[at] == '{')
            {
                int end = Text.IndexOf('}', at);
                string inside = Text[(at + 1)..end];
                text.Append(inside.Split(':')[0].ToUpperInvariant());
                at = end + 1;
            }
            else
            {
                text.Append(Text[at++]);
            }
        }

        return text.ToString();
    }

    private static IEnumerable<PatternPart.Slot> Slots(ImmutableArray<PatternPart> parts) => parts.SelectMany(p => p switch
    {
        PatternPart.Slot slot => [slot],
        PatternPart.Optional optional => Slots(optional.Parts),
        _ => Enumerable.Empty<PatternPart.Slot>(),
    });

    private static ImmutableArray<PatternPart> ReadParts(string text, ref int at, bool inBrackets)
    {
        ImmutableArray<PatternPart>.Builder parts = ImmutableArray.CreateBuilder<PatternPart>();
        while (at < text.Length)
        {
            char c = text[at];
            if (c == ']' && inBrackets)
            {
                at++;
                return parts.ToImmutable();
            }

            if (c == '[')
            {
                at++;
                parts.Add(new PatternPart.Optional(ReadParts(text, ref at, inBrackets: true)));
            }
            else if (c == '{')
            {
                int end = text.IndexOf('}', at);
                parts.Add(ReadSlot(text[(at + 1)..end]));
                at = end + 1;
            }
            else
            {
                int end = text.IndexOfAny(['{', '[', ']'], at);
                end = end < 0 ? text.Length : end;
                parts.AddRange(WordList.Of(text[at..end]).Select(w => new PatternPart.Literal(w.Text)));
                at = end;
            }
        }

        return parts.ToImmutable();
    }

    private static PatternPart.Slot ReadSlot(string inside)
    {
        string[] halves = inside.Split(':');
        string kind = halves.Length > 1 ? halves[1] : halves[0];
        return Enum.TryParse(kind.Replace(" ", "", StringComparison.Ordinal), ignoreCase: true, out SlotKind found)
            ? new PatternPart.Slot(halves[0], found)
            : throw new FormatException($"No slot is called `{kind}`.");
    }
}

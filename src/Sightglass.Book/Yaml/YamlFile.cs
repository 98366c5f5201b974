using System.Collections.Immutable;
using Sightglass.Basics.Diagnostics;
using Sightglass.Book.Messages;
using YamlDotNet.Core;

namespace Sightglass.Book.Yaml;

/// <summary>Reads one author's file into trees, reporting everything that is wrong with it as text.</summary>
internal sealed class YamlFile(YamlBudget budget, Findings found)
{
    private const int LargestMended = 1 << 20;

    /// <summary>The documents of the file; parts that cannot be understood are left out and reported.</summary>
    public ImmutableArray<YamlNode> Read(SourceText source)
    {
        MendedText text = new(source);
        LineScanner scanner = new(text, budget.Limits, (at, fault) => Damage(text, at, SyntaxAdvice.For(fault, source, at)));
        scanner.Run();
        return scanner.GaveUp ? [] : Parse(text);
    }

    private ImmutableArray<YamlNode> Parse(MendedText text)
    {
        Diagnostic? before = null;
        int next = 0;
        for (int attempt = 0; ; attempt++)
        {
            List<Diagnostic> notes = [];
            YamlTreeBuilder builder = new(text, budget, notes);
            Diagnostic? broken = TryBuild(builder, text);
            bool last = broken is null || text.Source.Text.Length > LargestMended || attempt >= budget.Limits.Mendings;
            if (broken is not null)
            {
                // The same complaint about the very next line is a consequence of the first.
                bool follows = broken.Span.Line == next && broken.Message == before?.Message;
                Damage(text, broken.Span.Start, follows ? null : broken);
                next = text.BlankBlock(broken.Span.Line);
                before = broken;
                last |= next == 0;
            }

            if (last)
            {
                foreach (Diagnostic note in notes)
                {
                    Damage(text, note.Span.Start, note);
                }

                return builder.Roots;
            }
        }
    }

    private static Diagnostic? TryBuild(YamlTreeBuilder builder, MendedText text)
    {
        try
        {
            builder.Build();
            return null;
        }
        catch (YamlException e)
        {
            int at = text.ToOriginal(e.Start.Index > 0 ? e.Start.Index : builder.LastEnd);
            return SyntaxAdvice.For(e, text.Source, at);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            // The parser also throws InvalidOperationException and others on some broken texts (seen with an unclosed brace).
            return SyntaxAdvice.For(e, text.Source, text.ToOriginal(builder.LastEnd));
        }
    }

    private void Damage(MendedText text, int at, Diagnostic? diagnostic)
    {
        if (diagnostic is not null)
        {
            found.Add(diagnostic);
        }

        // A key that stands twice takes nothing away that others could miss.
        if (diagnostic?.Code != "B019")
        {
            found.Damaged(text.Source, text.Source.Locate(at).Line);
        }
    }
}

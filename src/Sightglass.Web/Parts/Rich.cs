using System.Net;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Components;
using Sightglass.Basics.Language;

namespace Sightglass.Web.Parts;

/// <summary>A sentence with links and other markup in its gaps: it is translated as a whole, and every language puts the gaps where it needs them.</summary>
internal static class Rich
{
    // Stand round the number of a gap until the sentence is said: letters that no sentence has.
    private const char Opens = '\uE000';
    private const char Closes = '\uE001';

    /// <param name="sentence">In English; gaps that are no markup are texts.</param>
    public static MarkupString Text(FormattableString sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        object?[] gaps = sentence.GetArguments();
        object[] marks = [.. gaps.Select((_, i) => $"{Opens}{i}{Closes}")];
        string said = Encode(Say.With(FormattableStringFactory.Create(sentence.Format, marks)));
        for (int i = 0; i < gaps.Length; i++)
        {
            said = said.Replace(Encode($"{Opens}{i}{Closes}"), gaps[i] is MarkupString markup ? markup.Value : Encode(gaps[i]?.ToString()), StringComparison.Ordinal);
        }

        return new(said);
    }

    public static MarkupString Link(string address, string words) => new($"<a href=\"{Encode(address)}\">{Encode(words)}</a>");

    public static MarkupString Bold(string words) => In("b", words);

    /// <summary>The name of a key.</summary>
    public static MarkupString Key(string words) => In("kbd", words);

    public static MarkupString Code(string words) => In("code", words);

    /// <summary>What is typed into a terminal.</summary>
    public static MarkupString Typed(string words) =>
        new($"<span class=\"sans\">{string.Join(' ', words.Split(' ').Select(w => w.StartsWith('-') ? $"<span class=\"whole-word\">{Encode(w)}</span>" : Encode(w)))}</span>");

    private static MarkupString In(string element, string words) => new($"<{element}>{Encode(words)}</{element}>");

    private static string Encode(string? text) => WebUtility.HtmlEncode(text) ?? "";
}
